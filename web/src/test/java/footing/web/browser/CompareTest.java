package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Then and now: change numbers, see them named, and see what each did add up to the change. */
class CompareTest extends InBrowser {
    private static final LocatorAssertions.IsVisibleOptions SOON =
            new LocatorAssertions.IsVisibleOptions().setTimeout(60_000);

    /** Changes that concern every machine of the fleet: so many mixtures that it takes a while. */
    private static final String[][] EDITS = {
        {"discountRate: 8 %", "discountRate: 9 %"},
        {"inflation: 2.5 %", "inflation: 3 %"},
        {"rate: 6.9 %", "rate: 7.4 %"},
        {"months: 36", "months: 48"},
        {"shopRate: 65", "shopRate: 72"},
        {"burden: 17 %", "burden: 19 %"},
        {"variableCost: 1", "variableCost: 2"},
    };

    private Page named(String name) {
        open("/cases");
        page().setDefaultNavigationTimeout(60_000);
        return open(String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText(name))
                .getAttribute("href")));
    }

    private static void change(Page page, String label, String value) {
        Locator box = page.locator(".field")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^\\s*" + label)))
                .locator("input[type=text]")
                .first();
        box.fill(value);
        box.press("Enter");
        assertThat(page.locator("#undo")).isEnabled(new LocatorAssertions.IsEnabledOptions().setTimeout(60_000));
        assertThat(page.locator(".htmx-request"))
                .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(60_000));
    }

    private static void edit(Page page, String[]... edits) {
        page.locator(".casehead nav a")
                .filter(new Locator.FilterOptions().setHasText("Case file"))
                .click();
        String text = page.locator("#text").inputValue();
        for (String[] edit : edits) {
            assertThat(text).contains(edit[0]);
            text = text.replace(edit[0], edit[1]);
        }
        page.locator("#text").fill(text);
        page.locator("main button.main").click();
        assertThat(page.locator("#text")).hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(60_000));
    }

    private static BigDecimal amount(String text) {
        return new BigDecimal(text.strip().replace(",", "").replace("−", "-").replace("+", ""));
    }

    /** What stands in the table behind a figure, added up. */
    private static BigDecimal tableSum(Locator effect) {
        return effect.locator("tbody td").allTextContents().stream()
                .filter(t -> !t.isBlank())
                .map(CompareTest::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static void comparedWith(Page page, String then) {
        page.locator(".casehead nav a")
                .filter(new Locator.FilterOptions().setHasText("Compare"))
                .click();
        page.locator("#then").selectOption(then);
        page.locator(".pick button").click();
        assertThat(page.locator("#told")).isVisible(SOON);
    }

    @Test
    void compare_twoInputsChanged_namesThemAndTheirPartsAddUp() {
        Page page = named("One machine");
        String then = "version-" + page.locator("#case").getAttribute("data-version");
        change(page, "Billed per crew-hour", "95");
        change(page, "Paid per hour and person", "38");
        comparedWith(page, then);

        Locator changed = page.locator(".changed > div");
        assertThat(changed).hasCount(2);
        assertThat(changed.filter(new Locator.FilterOptions().setHasText("Billed per crew-hour")))
                .containsText("95");
        Locator effect = page.locator(".effect");
        assertThat(effect).hasCount(1);
        assertThat(effect.locator(".drawing canvas")).isVisible();
        effect.locator("summary").click();
        List<String> sums = effect.locator(".sums dd").allTextContents();
        BigDecimal change = amount(sums.get(2));
        assertThat(effect.locator("tbody tr")).hasCount(2);
        assertThat(change.signum()).isNotZero();
        assertThat(tableSum(effect)).isEqualByComparingTo(change);
        assertThat(amount(sums.get(1)).subtract(amount(sums.get(0)))).isEqualByComparingTo(change);
        assertThat(effect.locator("p").first()).containsText("efore");
        assertAccessible();
    }

    @Test
    void keyboard_only_comparesAnOlderVersionFromTheHistory() {
        Page page = named("One machine");
        change(page, "People on the crew", "2");
        page.locator(".casehead nav a")
                .filter(new Locator.FilterOptions().setHasText("History"))
                .click();
        page.locator("a[href*='then=version-1']").focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("#told")).isVisible(SOON);
        page.locator("#then").focus();
        page.keyboard().press("Tab");
        assertThat(page.locator("#now")).isFocused();
        page.keyboard().press("Home");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        assertThat(page.locator("#told")).isVisible(SOON);
        Locator table = page.locator(".effect summary").first();
        table.focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".effect table").first()).isVisible();
    }

    @Test
    void compare_longWork_showsHowFarItIsAndCanBeStopped() {
        Page page = named("Quillbrook");
        edit(page, EDITS);
        page.locator(".casehead nav a")
                .filter(new Locator.FilterOptions().setHasText("Compare"))
                .click();
        assertThat(page.locator(".awaited progress")).isVisible();
        assertAccessible();
        page.locator(".awaited button").click();
        assertThat(page.locator("#told")).containsText("Stopped", longWait());
        assertThat(page.locator(".effect").first()).isVisible();
        page.locator(".notice button").click();
        assertThat(page.locator(".awaited progress")).isVisible();
        page.locator(".awaited button").click();
        assertThat(page.locator("#told")).containsText("Stopped", longWait());
    }

    private static LocatorAssertions.ContainsTextOptions longWait() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(60_000);
    }

    @Test
    void compare_fleetEveryWidth_isAccessible() {
        Page first = named("Quillbrook");
        String address = first.url() + "/compare";
        edit(first, new String[] {"billing: ", "billing: 1"});
        assertThat(first.locator("#sentence")).isVisible(SOON);
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                Page page = look(width, dark);
                page.navigate(address);
                assertThat(page.locator("#told")).isVisible(SOON);
                assertThat(page.locator(".effect").first().locator(".drawing canvas"))
                        .isVisible();
                assertAccessible();
                Screens.picture(page, "compare-" + width + (dark ? "-dark" : "-light"));
            }
        }
    }
}
