package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Photos of runs: taken without a line, measured, looked at, pointed at by hand. */
class PhotoPagesTest extends InBrowser {
    private static final Path PRINT = Path.of("..", "cases", "trial-day", "photos", "print.jpg")
            .toAbsolutePath()
            .normalize();
    private static final double SOON = 90_000;

    private String begin() {
        open("/cases");
        String path = String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText("One machine"))
                .getAttribute("href"));
        open(path + "/trials/new");
        page().locator("#judge").selectOption("area");
        page().locator("[id='a.name']").fill("air");
        page().locator("[id='b.name']").fill("airless");
        page().locator("#pairs").fill("2");
        page().locator("#card").fill("11x8.5in");
        page().locator("button.main").click();
        page().waitForURL(Pattern.compile(".*/trials/\\d+"));
        return page().url().substring(url("").length());
    }

    private static LocatorAssertions.ContainsTextOptions soon() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(SOON);
    }

    @Test
    void photo_takenWithoutALine_isSentOnceMeasuredLookedAtAndPointedAtByHand() {
        look(375, false);
        String trial = begin();
        open(trial.replace("/cases/", "/field/").replace("/trials/", "/"));
        assertAccessible();
        page().context().setOffline(true);
        page().locator("#photos input").setInputFiles(PRINT);
        assertThat(page().locator("#photo-list li")).hasCount(1);
        assertThat(page().locator("#photo-list")).containsText("not sent yet");
        page().context().setOffline(false);
        assertThat(page().locator("#photo-list")).containsText("Print area", soon());
        assertThat(page().locator("#photo-list")).not().containsText("not sent yet");
        assertThat(page().locator("#photo-list img")).isVisible();
        assertAccessible();
        Screens.picture(page(), "field-photo");
        assertThat(page().locator("#photo-list a")).hasText("Point at it by hand");
        page().locator("#photo-list button").click();
        assertThat(page().locator("#value")).hasValue(Pattern.compile("\\d+\\.?\\d*"));
        page().locator("#keep").click();
        assertThat(page().locator("#said")).containsText("Kept.", soon());
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark);
                String mark = "-" + width + (dark ? "-dark" : "-light");
                open(trial);
                assertThat(page().locator(".photo")).hasCount(1);
                assertAccessible();
                Screens.picture(page(), "trial-photos" + mark);
                page().locator(".photo .acts a").first().click();
                assertThat(page().locator("#tools")).isVisible();
                assertAccessible();
                Screens.picture(page(), "photo" + mark);
            }
        }
        pointedAt();
        expectTrouble("ERR_INTERNET_DISCONNECTED");
    }

    /** Four taps on the photo are its corners; one of them is dragged. */
    private void pointedAt() {
        look(1280, false).setDefaultTimeout(SOON);
        open("/cases");
        Page page = page();
        page.locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText("One machine"))
                .click();
        page.locator(".casehead nav a")
                .filter(new Locator.FilterOptions().setHasText("Trials"))
                .click();
        page.locator(".cases h2 a").first().click();
        page.locator(".photo .acts a").first().click();
        Locator stage = page.locator("#stage svg");
        BoundingBox box = stage.boundingBox();
        double[][] taps = {{0.1, 0.1}, {0.9, 0.1}, {0.9, 0.9}, {0.2, 0.8}, {0.5, 0.5}};
        for (double[] tap : taps) {
            stage.click(new Locator.ClickOptions().setPosition(tap[0] * box.width, tap[1] * box.height));
        }
        assertThat(page.locator("#pointed")).containsText("4 of 4 corners");
        String before = page.locator("#corners").inputValue();
        Locator corner = page.locator("circle.corners").first();
        corner.scrollIntoViewIfNeeded();
        BoundingBox from = corner.boundingBox();
        page.mouse().move(from.x + from.width / 2, from.y + from.height / 2);
        page.mouse().down();
        page.mouse().move(from.x + 40, from.y + 40);
        page.mouse().up();
        assertThat(page.locator("#corners")).not().hasValue(before);
        assertThat(page.locator("#pointed")).containsText("4 of 4 corners");
        page.locator("#take-all").click();
        assertThat(page.locator("#corners")).hasValue("");
        page.locator("#take-found").click();
        assertThat(page.locator("#border")).hasValue(Pattern.compile("(\\d+,\\d+ ){30,}\\d+,\\d+"));
        page.locator(".mend form button.main").click();
        assertThat(page.locator(".seen")).containsText("Print area", soon());
    }
}
