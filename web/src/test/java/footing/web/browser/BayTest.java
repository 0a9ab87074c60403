package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import footing.web.answer.FieldView;
import org.junit.jupiter.api.Test;

/** Fit, set-up and ground of a machine and a package: what is measured there is kept, judged and undone. */
class BayTest extends InBrowser {
    private static final String[] FIRST_LAST = {"rearLeft", "rearRight", "frontLeft", "frontRight"};

    private String machine(String id) {
        open("/cases");
        return page().locator(".cases h2 a")
                        .filter(new Locator.FilterOptions().setHasText("Quillbrook"))
                        .getAttribute("href")
                + "/machines/" + id;
    }

    private String address() {
        return machine("E1") + "/fit?wheels=airless-24";
    }

    private Locator box(String path) {
        return page().locator("#" + FieldView.id(path) + " input[type=text]");
    }

    @Test
    void bay_everyWidth_isAccessibleAndCarriesItsCaution() {
        String fit = address();
        for (String at : new String[] {fit, fit.replace("/fit?", "/ground?")}) {
            for (int width : new int[] {375, 1280, 1920}) {
                for (boolean dark : new boolean[] {false, true}) {
                    Page page = look(width, dark);
                    open(at);
                    assertThat(page.locator("h1")).containsText("airless-24");
                    assertThat(page.locator("main")).containsText("no permission to mow a slope");
                    assertThat(page.locator(".sketch").first()).isVisible();
                    if (width < 1120) {
                        page.locator("#open-inputs").click();
                    }
                    page.locator("#section-scales summary").click();
                    assertThat(box("machines.E1.wheelLoads.driveLeft")).hasValue("520 lb");
                    assertAccessible();
                    String which = at.equals(fit) ? "fit-" : "ground-";
                    Screens.picture(page, "bay-" + which + width + (dark ? "-dark" : "-light"));
                }
            }
        }
    }

    @Test
    void measured_typedBareAndKept_isJudgedAndUndoneWithoutLeavingThePage() {
        open(address());
        for (String tip : FIRST_LAST) {
            Locator box = box("machines.E1.fitted.tips." + tip);
            box.fill(tip.startsWith("rear") ? "3.35" : "3.16 in");
            page().keyboard().press("Tab");
            // One after the other, so that they are undone in this order.
            assertThat(box).hasValue(tip.startsWith("rear") ? "3.35 in" : "3.16 in");
            assertThat(box.locator("xpath=ancestor::*[contains(@class,'field')]"))
                    .containsText("yours");
        }
        assertThat(page().locator("#measured")).containsText("rake: 0.19 in");
        page().locator("#undo").click();
        assertThat(page().locator("#measured")).not().containsText("rake: 0.19 in");
        assertThat(page().locator("h1")).hasText("airless-24 on E1: fits");
        page().locator("#redo").click();
        assertThat(page().locator("#measured")).containsText("rake: 0.19 in");
        for (int i = FIRST_LAST.length - 1; i >= 0; i--) {
            page().locator("#undo").click();
            assertThat(box("machines.E1.fitted.tips." + FIRST_LAST[i])).hasValue("");
        }
    }

    /** From what is left to find out to its box, in by keyboard alone, and the verdict follows. */
    @Test
    void toFindOut_followedByKeyboard_leadsToItsBoxAndSettlesIt() {
        open(machine("S4") + "/fit?wheels=airless-24");
        assertThat(page().locator("h1")).hasText("airless-24 on S4: check");
        page().locator("#tests a.guess-link").last().focus();
        page().keyboard().press("Enter");
        assertThat(box("machines.S4.topSpeed")).isFocused();
        page().keyboard().type("11");
        page().keyboard().press("Enter");
        assertThat(page().locator("#tests")).containsText("rated 15 mph, needs 11 mph");
        assertThat(box("machines.S4.topSpeed")).isFocused();
        page().locator("#undo").click();
        assertThat(page().locator("#tests")).containsText("rated 15 mph, needs ?");
    }

    @Test
    void measured_nonsense_isRefusedInItsBoxAndNothingIsLost() {
        open(address());
        page().locator("#section-floor summary").click();
        box("machines.E1.wheelbase").fill("tall");
        page().keyboard().press("Tab");
        assertThat(page().locator("#" + FieldView.id("machines.E1.wheelbase") + " [role=alert]"))
                .containsText("a length is a number with its unit");
        assertThat(box("machines.E1.wheelbase")).hasValue("tall");
        assertAccessible();
        expectTrouble("422");
    }

    @Test
    void wheels_measuredOnTheGroundPage_changeItsTables() {
        open(machine("E1") + "/ground?wheels=foam-24");
        assertThat(page().locator("#sides")).containsText("21.3 psi");
        page().locator("#group-wheels summary").first().click();
        box("assemblies.drive24-foam.print.length").fill("4 1/2");
        page().keyboard().press("Tab");
        assertThat(box("assemblies.drive24-foam.print.length")).hasValue("4.5 in");
        assertThat(page().locator("#sides")).not().containsText("21.3 psi");
        page().locator("#undo").click();
        assertThat(page().locator("#sides")).containsText("21.3 psi");
    }
}
