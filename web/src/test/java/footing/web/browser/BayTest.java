package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Fit, set-up and ground of a machine and a package: what is measured there is kept, judged and undone. */
class BayTest extends InBrowser {
    private String address() {
        open("/cases");
        return page().locator(".cases h2 a")
                        .filter(new Locator.FilterOptions().setHasText("Quillbrook"))
                        .getAttribute("href")
                + "/machines/E1/fit?wheels=airless-24";
    }

    @Test
    void bay_everyWidth_isAccessibleAndCarriesItsCaution() {
        String address = address();
        for (int width : new int[] {375, 1280, 1920}) {
            for (boolean dark : new boolean[] {false, true}) {
                Page page = look(width, dark);
                open(address);
                assertThat(page.locator("h1")).hasText("airless-24 on E1: fits");
                assertThat(page.locator("main")).containsText("no permission to mow a slope");
                assertThat(page.locator(".sketch").first()).isVisible();
                assertAccessible();
                Screens.picture(page, "bay-" + width + (dark ? "-dark" : "-light"));
            }
        }
    }

    @Test
    void measured_typedBareAndKept_isJudgedAndCanBeUndone() {
        open(address());
        page().locator("#measured-0").fill("3.35");
        page().locator("#measured-1").fill("3.35 in");
        page().locator("#measured-2").fill("3.16");
        page().locator("#measured-3").fill("3.16");
        page().locator("button.main").click();
        assertThat(page().locator("main")).containsText("rake: 0.19 in");
        assertThat(page().locator("#measured-0")).hasValue("3.35 in");
        page().locator(".steps button").first().click();
        open(address());
        assertThat(page().locator("#measured-0")).hasValue("");
    }

    @Test
    void measured_nonsense_isRefusedWithWords() {
        open(address());
        page().locator("#measured-0").fill("tall");
        page().locator("button.main").click();
        assertThat(page().locator("main [role=alert]")).containsText("fitted.tips.rearLeft");
        expectTrouble("422");
    }
}
