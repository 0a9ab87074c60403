package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Records on the page: a sheet handed over, and flats written down on a phone, with the line down as well. */
class RecordsPagesTest extends InBrowser {
    private static final Path SHEET =
            Path.of("..", "cases", "quillbrook-records.csv").toAbsolutePath().normalize();
    private static final double SOON = 60_000;

    private String path(String name) {
        open("/cases");
        return String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText(name))
                .getAttribute("href"));
    }

    @Test
    void records_demoSheet_isReadMendedAndDrawn() {
        String path = path("Quillbrook");
        Page page = open(path + "/records");
        assertAccessible();
        page.locator("#file").setInputFiles(SHEET);
        page.locator("form.hand button").click();
        assertThat(page.locator("#to-mend li").first())
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark).setDefaultNavigationTimeout(SOON);
                open(path + "/records");
                page().locator(".drawing").all().forEach(Locator::scrollIntoViewIfNeeded);
                assertThat(page().locator(".drawing canvas").first())
                        .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
                assertAccessible();
                Screens.picture(page(), "records-" + width + (dark ? "-dark" : "-light"));
            }
        }
    }

    private void writeDown(String hours) {
        page().locator("[name=machine][value=mower]").check(force());
        page().locator("[name=position][value=drive]").check(force());
        page().locator("#hours").fill(hours);
        page().locator("#keep").click();
    }

    /** The keys are their labels; the round mark itself may lie under them. */
    private static Locator.CheckOptions force() {
        return new Locator.CheckOptions().setForce(true);
    }

    @Test
    void log_lineDownThenBackAndADoubleTap_keepsEachRowOnce() {
        String path = path("One machine");
        look(375, false);
        Page page = open(path + "/log");
        assertAccessible();
        page.context().setOffline(true);
        writeDown("11");
        assertThat(page.locator("#said")).containsText("On this device");
        page.waitForTimeout(1500);
        page.locator("[name=position][value=caster]").check(force());
        page.locator("#hours").fill("12");
        page.locator("#keep").dblclick();
        assertThat(page.locator("#last li")).hasCount(2);
        Screens.picture(page, "log-offline");
        page.context().setOffline(false);
        assertThat(page.locator("#said"))
                .containsText("Kept.", new LocatorAssertions.ContainsTextOptions().setTimeout(SOON));
        expectTrouble("ERR_INTERNET_DISCONNECTED");
        open(path + "/log");
        assertThat(page.locator("#last li")).hasCount(2);
        open(path + "/records");
        assertThat(page.locator("[aria-labelledby=entries-head] li")).hasCount(2);
        look(375, true);
        open(path + "/log");
        assertAccessible();
        Screens.picture(page(), "log-dark");
    }
}
