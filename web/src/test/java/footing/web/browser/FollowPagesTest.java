package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A forecast kept on the page, and an invented season held against it. */
class FollowPagesTest extends InBrowser {
    private static final double SOON = 90_000;
    private static final List<String> MACHINES = List.of("E1", "E2", "E3", "S1", "S2", "S3", "S4", "C1", "C2");

    private static Path season(Path folder) throws IOException {
        StringBuilder log = new StringBuilder("date,machine,event,hours,position,minutes,cost\n");
        for (int m = 0; m < MACHINES.size(); m++) {
            String id = MACHINES.get(m);
            log.append("2027-02-15,%s,begin,1000,,,\n".formatted(id));
            for (int i = 1; i <= 2 + 4 * (m % 3); i++) {
                log.append("2027-%02d-1%d,%s,flat,,drive,%d,%d\n".formatted(4 + i % 6, m, id, 20 + 7 * i, 4 + i));
            }
            log.append("2027-10-31,%s,reading,%d,,,\n".formatted(id, 1400 + 30 * m));
        }
        return Files.writeString(folder.resolve("season.csv"), log);
    }

    @Test
    void follow_keptThenWrittenDown_isDrawnAndAccessible(@TempDir Path folder) throws IOException {
        open("/cases");
        String path = String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText("Quillbrook"))
                .getAttribute("href"));
        Page page = open(path + "/follow");
        assertAccessible();
        Screens.picture(page, "follow-none-1280");
        page.setDefaultNavigationTimeout(SOON);
        page.locator("form.hand button").click();
        assertThat(page.locator(".notice")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
        assertAccessible();
        Screens.picture(page, "follow-silent-1280");
        open(path + "/records");
        page.locator("#file").setInputFiles(season(folder));
        page.locator("form.hand button").click();
        assertThat(page.locator(".notice")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark).setDefaultNavigationTimeout(SOON);
                open(path + "/follow");
                page().locator(".fig .drawing").all().forEach(Locator::scrollIntoViewIfNeeded);
                assertThat(page().locator(".drawing canvas").last())
                        .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SOON));
                assertAccessible();
                Screens.picture(page(), "follow-" + width + (dark ? "-dark" : "-light"));
            }
        }
        page().locator("nav[aria-label='What is drawn'] a").last().click();
        assertThat(page().locator("#follow-all h2")).hasText("All machines: paid for flats, USD");
    }
}
