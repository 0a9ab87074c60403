package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import footing.web.serve.NotServed;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** Trials: begun on a phone, run by run without a line, judged on the large screen. */
class FieldPagesTest extends InBrowser {
    private static final Path DAY =
            Path.of("..", "cases", "trial-day").toAbsolutePath().normalize();
    private static final double SOON = 90_000;
    private static final int RUNS = 10;

    private String path(String name) {
        open("/cases");
        return String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText(name))
                .getAttribute("href"));
    }

    /** Begins a trial; gives the path of its page. */
    private String begin(String path, String judge) {
        open(path + "/trials/new");
        page().locator("#judge").selectOption(judge);
        page().locator("[id='a.name']").fill("air");
        page().locator("[id='b.name']").fill("airless");
        page().locator("#surfaces").fill("dry fescue, wet fescue");
        page().locator("#pairs").fill("3");
        page().locator("button.main").click();
        page().waitForURL(java.util.regex.Pattern.compile(".*/trials/\\d+"));
        return page().url().substring(url("").length());
    }

    private static String inTheField(String trial) {
        return trial.replace("/cases/", "/field/").replace("/trials/", "/");
    }

    private void writeDown(int number) {
        Page page = page();
        assertThat(page.locator("#now")).containsText("Run " + number + ":");
        Integer.toString(400 + number)
                .chars()
                .forEach(digit -> page.locator("#pad button")
                        .filter(new Locator.FilterOptions().setHasText(String.valueOf((char) digit)))
                        .click());
        page.locator("#keep").click();
        assertThat(page.locator("#last li")).hasCount(number);
        // The next row gets its own mark once a second tap of the same hand is out of the question.
        page.waitForTimeout(1300);
    }

    @Test
    void field_lineCutTenRunsWrittenTabClosedAndReopened_keepsTenRunsOnceEachInOrder() throws NotServed {
        String path = path("One machine");
        look(375, false);
        String trial = begin(path, "steady");
        open(inTheField(trial));
        assertThat(page().locator("#offline")).containsText("opens without a line");
        cutLine();
        IntStream.rangeClosed(1, RUNS).forEach(this::writeDown);
        assertThat(page().locator("#said")).containsText("not sent yet");
        Page again = page().context().newPage();
        page().close();
        again.navigate(url(inTheField(trial)));
        assertThat(again.locator("#last li")).hasCount(RUNS);
        assertThat(again.locator("#now")).containsText("Run " + (RUNS + 1) + ":");
        Screens.picture(again, "field-offline");
        mendLine();
        again.waitForFunction(
                "() => Object.entries(localStorage).some(e => /^footing-field-(?!sent)/.test(e[0]) && e[1] === '[]')",
                null,
                new Page.WaitForFunctionOptions().setTimeout(SOON));
        again.navigate(url(trial));
        List<String> gave = again.locator(".runs li strong").allInnerTexts();
        Assertions.assertThat(gave)
                .isEqualTo(IntStream.rangeClosed(1, RUNS)
                        .mapToObj(n -> 400 + n + " lbf")
                        .toList());
        again.navigate(url(inTheField(trial)));
        assertThat(again.locator("#last li")).hasCount(RUNS);
        assertThat(again.locator("#now")).containsText("Run " + (RUNS + 1) + ":");
        expectTrouble("ERR_CONNECTION_REFUSED");
        expectTrouble("ERR_CONNECTION_RESET");
    }

    @Test
    void pages_everyWidthLightAndDark_areAccessible() {
        String path = path("Quillbrook");
        open(path + "/trials");
        page().locator("#file").setInputFiles(DAY.resolve("pull.yaml"));
        page().locator("form.hand button").click();
        assertThat(page().locator("#verdict")).containsText("is better");
        String judged = page().url().substring(url("").length());
        String pulls = inTheField(begin(path, "winner"));
        String steady = inTheField(begin(path, "steady"));
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark);
                String mark = "-" + width + (dark ? "-dark" : "-light");
                seen(path + "/trials", "trials" + mark);
                seen(path + "/trials/new", "trial-new" + mark);
                seen(pulls, "field-pulls" + mark);
                seen(steady, "field" + mark);
                open(judged);
                page().locator(".drawing").first().scrollIntoViewIfNeeded();
                assertThat(page().locator(".drawing canvas").first())
                        .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
                assertAccessible();
                Screens.picture(page(), "trial" + mark);
            }
        }
    }

    private void seen(String path, String name) {
        open(path);
        assertAccessible();
        Screens.picture(page(), name);
    }
}
