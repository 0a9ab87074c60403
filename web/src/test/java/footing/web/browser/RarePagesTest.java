package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages one seldom sees: the password, errors, what is laid away, deleted or overtaken. */
class RarePagesTest extends InBrowser {
    private static final Pattern CASE = Pattern.compile(".*/cases/[a-z0-9]{12}");

    /** The path of a fresh copy of the one-machine example. */
    private String copied() {
        open("/cases");
        page().locator("[aria-label='Copy One machine (example)']").click();
        page().waitForURL(CASE);
        return page().url().substring(url("").length());
    }

    private void send(String title) {
        page().locator("main form button").first().click();
        assertThat(page().locator("h1")).hasText(title);
    }

    @ParameterizedTest
    @CsvSource({"375, false", "375, true", "1280, false", "1280, true", "1920, false", "1920, true"})
    void passwordAndErrors_atEveryWidth_areAccessible(int width, boolean dark) {
        look(width, dark);
        for (String path : new String[] {"/login", "/login?wrong", "/login?wait", "/nope", "/cases/zzzzzzzzzzzz"}) {
            open(path);
            assertAccessible();
        }
        expectTrouble("404");
    }

    @ParameterizedTest
    @CsvSource({"375, false", "375, true", "1280, false", "1280, true", "1920, false", "1920, true"})
    void overtaken_atEveryWidth_isAccessible(int width, boolean dark) {
        look(width, dark);
        String path = copied();
        open(path + "/rename");
        Page other = page().context().newPage();
        other.navigate(url(path + "/file"));
        other.locator("#text").fill(other.locator("#text").inputValue() + "# theirs\n");
        other.locator("button.main").click();
        other.waitForURL(CASE);
        page().locator("#name").fill("Mine");
        send("Changed meanwhile");
        assertAccessible();
        expectTrouble("409");
    }

    @ParameterizedTest
    @CsvSource({"375, false", "375, true", "1280, false", "1280, true", "1920, false", "1920, true"})
    void laidAwayAndDeleted_atEveryWidth_areAccessible(int width, boolean dark) {
        look(width, dark);
        String path = copied();
        open("/cases");
        page().locator("form[action$='" + path + "/archive'] button").click();
        assertThat(page().locator(".notice")).isVisible();
        assertAccessible();
        open("/cases/archived");
        assertAccessible();
        open(path + "/delete");
        assertAccessible();
        send("Archive");
    }

    @Test
    void take_aWorkbook_isWaitedForAndSaved() {
        Page page = open(copied() + "/take");
        assertAccessible();
        page.locator("main form button")
                .filter(new Locator.FilterOptions().setHasText("Write it"))
                .click();
        assertThat(page.locator("#made progress, #ready").first()).isVisible();
        assertThat(page.locator("#ready")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(60_000));
        assertAccessible();
        Download saved = page.waitForDownload(() -> page.locator("#ready").click());
        Assertions.assertThat(saved.suggestedFilename()).endsWith(".xlsx");
        String address = page.url();
        for (int width : new int[] {375, 1280}) {
            look(width, width < 500).navigate(address);
            assertAccessible();
            Screens.picture(page(), "take-" + width);
        }
    }
}
