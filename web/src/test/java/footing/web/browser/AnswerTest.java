package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The answer page as it is used: change a number, see the sentence change, ask why, take it back. */
class AnswerTest extends InBrowser {
    private static final LocatorAssertions.ContainsTextOptions SOON =
            new LocatorAssertions.ContainsTextOptions().setTimeout(30_000);

    private static String address(Page page, String name) {
        return String.valueOf(page.locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText(name))
                .getAttribute("href"));
    }

    private Page oneMachine() {
        open("/cases");
        return open(address(page(), "One machine"));
    }

    private Page fleet() {
        open("/cases");
        return open(address(page(), "Quillbrook"));
    }

    private void await(Page page) {
        assertThat(page.locator(".sharpening"))
                .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(120_000));
    }

    private static Locator box(Page page, String label) {
        return page.locator(".field")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^\\s*" + label)))
                .locator("input[type=text]")
                .first();
    }

    /** Cheap airless wheels are no toss-up any more. */
    private static final String PRICE = "[id^=in-assemblies-airless-price] input[type=text]";

    @Test
    void change_price_changesTheSentenceAndCanBeUndone() {
        Page page = oneMachine();
        Locator sentence = page.locator("#sentence");
        String before = sentence.textContent();
        page.locator(".section summary")
                .filter(new Locator.FilterOptions().setHasText("Airless drives"))
                .click();
        Locator price = page.locator(PRICE);
        price.fill("300");
        price.press("Enter");
        assertThat(sentence).not().hasText(before);
        assertThat(page.locator("#said")).containsText("The answer is now:");
        assertThat(price).hasValue("300");
        page.locator("#undo").click();
        assertThat(price).hasValue("610");
        assertThat(sentence).hasText(before);
        page.locator("#redo").click();
        assertThat(price).hasValue("300");
        page.locator("#undo").click();
        assertThat(price).hasValue("610");
        await(page);
        assertThat(sentence).hasText(before);
    }

    @Test
    void change_wrongValue_saysWhatFitsAndKeepsWhatWasTyped() {
        Page page = oneMachine();
        Locator people = box(page, "People on the crew");
        people.fill("a few");
        people.press("Tab");
        Locator field = page.locator(".field.wrong");
        assertThat(field.locator(".faults")).containsText("a few");
        assertThat(people).hasValue("a few");
        assertThat(people).hasAttribute("aria-invalid", "true");
        Locator day = box(page, "Billed per crew-hour");
        day.fill("80");
        day.press("Enter");
        assertThat(page.locator(".casehead + .columns")).isVisible();
        assertThat(people).hasValue("a few");
        people.fill("1");
        people.press("Enter");
        assertThat(page.locator(".field.wrong")).hasCount(0);
        expectTrouble("422");
    }

    @Test
    void change_threePoint_wantsAllThree() {
        Page page = oneMachine();
        Locator flats = page.locator(".field").filter(new Locator.FilterOptions().setHasText("Flats a season on air"));
        flats.locator("input[name=low]").fill("");
        flats.locator("input[name=low]").press("Tab");
        assertThat(flats.locator(".faults")).containsText("Give all three");
        flats.locator("input[name=low]").fill("2");
        flats.locator("input[name=low]").press("Enter");
        assertThat(flats.locator(".faults")).hasCount(0);
        assertThat(flats.locator("svg.curve")).isVisible();
        expectTrouble("422");
    }

    @Test
    void refinement_whileTyping_keepsFocusAndText() {
        Page page = oneMachine();
        Locator wage = box(page, "Paid per hour and person");
        wage.fill("31");
        wage.press("Enter");
        Locator billing = box(page, "Billed per crew-hour");
        billing.click();
        billing.fill("7");
        await(page);
        assertThat(billing).isFocused();
        assertThat(billing).hasValue("7");
        billing.fill("75");
    }

    @Test
    void explain_saving_opensItsTree() {
        Page page = fleet();
        Locator why = page.locator("#case .mrow .saves .why").first();
        String shown = why.locator("span").first().textContent();
        why.click();
        Locator dialog = page.locator("#why");
        assertThat(dialog).isVisible();
        assertThat(dialog.locator(".tree .leaf").first()).isAttached();
        assertThat(dialog).containsText("Saving against what it carries now");
        String value = dialog.locator(".tree .value").first().textContent();
        assertThat(Math.round(Double.parseDouble(value.replace(",", "").replace(" USD", ""))))
                .isEqualTo(Math.round(Double.parseDouble(shown.replace(",", ""))));
        page.keyboard().press("Escape");
        assertThat(dialog).isHidden();
        assertThat(why).isFocused();
    }

    @Test
    void fleet_whole_namesGuessesAndWhatToFindOut() {
        Page page = fleet();
        assertThat(page.locator("#rests")).containsText("numbers are yours");
        await(page);
        assertThat(page.locator("#rests")).containsText("guess", SOON);
        assertThat(page.locator("#find-out li").first()).isVisible();
        Locator guess = page.locator(".guess-link").first();
        guess.click();
        assertThat(page.locator(".inputs input:focus")).isVisible();
    }

    @Test
    void machine_everyFigure_isDrawnAndHasItsTable() {
        Page page = fleet();
        page.locator(".mrow .who a").first().click();
        await(page);
        Locator figures = page.locator(".fig");
        assertThat(figures).hasCount(7);
        for (int i = 0; i < figures.count(); i++) {
            Locator figure = figures.nth(i);
            figure.scrollIntoViewIfNeeded();
            assertThat(figure.locator(".drawing canvas")).isVisible();
            figure.locator("summary").click();
            assertThat(figure.locator("tbody tr").first()).isVisible();
        }
    }

    @Test
    void machine_whereItGoes_everyPartOpensItsTree() {
        Page page = fleet();
        page.locator(".mrow .who a").first().click();
        page.waitForURL("**/machines/*");
        page.locator("#where summary").click();
        Locator row = page.locator("#where tbody tr").first();
        assertThat(row.locator(".why")).hasCount(8);
        row.locator(".why").nth(1).click();
        assertThat(page.locator("#why .tree .label").first()).hasText("Renewals");
    }

    @Test
    void fleet_everyWidth_drawsAllBarsOnOneScale() {
        for (int width : new int[] {375, 1280, 1920}) {
            look(width, false);
            Page page = fleet();
            Object zeros = page.evaluate("() => new Set([...document.querySelectorAll('.mrow .zero')]"
                    + ".map(z => Math.round(z.getBoundingClientRect().x))).size");
            assertThat(zeros).as("places of zero at %d", width).isEqualTo(1);
        }
    }

    @Test
    void keyboard_only_changesANumberAndAsksWhy() {
        Page page = oneMachine();
        Locator sentence = page.locator("#sentence");
        String before = sentence.textContent();
        tabTo(page, "#case .why");
        page.keyboard().press("Enter");
        assertThat(page.locator("#why")).isVisible();
        page.keyboard().press("Escape");
        tabTo(page, "#section-wheels-3 > summary");
        page.keyboard().press("Enter");
        tabTo(page, PRICE);
        page.keyboard().press("Control+A");
        page.keyboard().type("300");
        page.keyboard().press("Enter");
        assertThat(sentence).not().hasText(before);
        assertThat(page.locator(PRICE)).isFocused();
        page.locator("#undo").focus();
        page.keyboard().press("Enter");
        assertThat(sentence).hasText(before);
    }

    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 300; i++) {
            page.keyboard().press("Tab");
            if (Boolean.TRUE.equals(page.evaluate("s => document.activeElement.matches(s)", selector))) {
                return;
            }
        }
        throw new AssertionError("no way by keyboard to " + selector);
    }

    @Test
    void drawer_narrowScreen_opensAndClosesWithTheAnswerInSight() {
        look(375, false);
        Page page = oneMachine();
        page.locator("#open-inputs").click();
        assertThat(page.locator("#inputs .mini")).isVisible();
        Locator billing = box(page, "Billed per crew-hour");
        billing.fill("90");
        billing.press("Enter");
        assertThat(page.locator("#undo")).isEnabled();
        assertThat(page.locator("#inputs")).isVisible();
        page.keyboard().press("Escape");
        assertThat(page.locator("#inputs")).isHidden();
        assertThat(page.locator("#open-inputs")).isFocused();
    }

    @Test
    void pages_everyWidthLightAndDark_areAccessible() {
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark);
                Page page = fleet();
                await(page);
                assertAccessible();
                page.locator(".mrow .who a").first().click();
                await(page);
                assertAccessible();
                page.locator(".choices .why").first().click();
                assertThat(page.locator("#why")).isVisible();
                assertAccessible();
            }
        }
    }

    @Test
    void sharpen_tax_canBeAddedAndTakenOut() {
        Page page = oneMachine();
        page.locator("#sharpen-tax summary").click();
        page.locator("#tax-rate").fill("24 %");
        page.locator("#tax-schedule").fill("80 %, 50 %");
        page.locator("#sharpen-tax button").click();
        assertThat(page.locator("#sharpen-tax .faults").first()).isVisible();
        assertThat(page.locator("#tax-rate")).hasValue("24 %");
        page.locator("#tax-schedule").fill("100 %");
        page.locator("#sharpen-tax button").click();
        assertThat(page.locator("#sharpen-tax summary")).containsText("24 %");
        page.locator("#undo").click();
        assertThat(page.locator("#sharpen-tax summary")).containsText("left out");
        expectTrouble("422");
    }
}
