package footing.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CasePagesTest extends InBrowser {
    private static final Pattern CASE = Pattern.compile(".*/cases/[a-z0-9]{12}");

    private Locator button(String name) {
        return page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    private Locator link(String name) {
        return page().getByRole(
                        AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static String oneMachine() throws IOException {
        return Files.readString(Path.of(System.getProperty("basedir", "web"), "..", "cases", "one-machine.yaml"));
    }

    /** Pastes a text and tells the path of the case made of it. */
    private String imported(String text) {
        open("/cases/import");
        page().locator("#text").fill(text);
        button("Import").click();
        page().waitForURL(CASE);
        expectTrouble("404");
        return page().url().substring(url("").length());
    }

    @Test
    void newCase_byTheEightQuestions_leadsToIt() {
        open("/");
        link("New case").click();
        page().getByLabel("How many alike").fill("several");
        page().getByLabel("Hours a season").fill("520");
        assertThat(page().locator("#alike-fault")).not().isEmpty();
        button("Answer it").click();
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("How many alike");
        expectTrouble("422");
        assertThat(page().getByLabel("How many alike")).hasValue("several");
        assertThat(page().getByLabel("Hours a season")).hasValue("520");
        page().getByLabel("How many alike").fill("3");
        page().getByLabel("Owned, or about to be bought").selectOption("order");
        assertThat(page().locator("[data-field=hoursNow]")).isHidden();
        button("Answer it").click();
        page().waitForURL(CASE);
        expectTrouble("404");
        open(page().url().substring(url("").length()) + "/file");
        assertThat(page().locator("#text")).hasValue(Pattern.compile("\\b520\\b"));
    }

    @Test
    void import_aBrokenFile_isMendedWhereItStands() throws IOException {
        String broken = oneMachine().replaceFirst("asOf: .*", "asOf: soon");
        open("/cases/import");
        page().locator("#text").fill(broken);
        button("Import").click();
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("1 problem");
        expectTrouble("422");
        assertThat(page().locator("#text")).hasValue(broken);
        page().locator(".where").click();
        Object line = page().evaluate("() => { const t = document.getElementById('text');"
                + " return t.value.slice(t.selectionStart, t.selectionEnd); }");
        assertThat(line).isEqualTo("asOf: soon");
        assertThat(page().locator(".gutter .marked")).hasCount(1);
        page().keyboard().type("asOf: 2027-03-01");
        button("Try again").click();
        page().waitForURL(CASE);
        expectTrouble("404");
    }

    @Test
    void file_changed_isUndoneAndDoneAgain() throws IOException {
        String path = imported(oneMachine());
        open(path + "/file");
        page().locator("#text").fill(oneMachine() + "# a remark\n");
        button("Save").click();
        page().waitForURL(CASE);
        expectTrouble("404");
        open(path + "/history");
        page().getByText("What changed").first().click();
        assertThat(page().locator(".lines .new")).containsText("# a remark");
        button("Undo").click();
        assertThat(page().locator(".history .now .said")).hasText("Undone: Case file: 1 line changed");
        assertThat(button("Undo")).isDisabled();
        button("Redo").click();
        assertThat(page().locator(".history .now .said")).hasText("Done again: Case file: 1 line changed");
        button("Go back to version 1").click();
        open(path + "/file");
        assertThat(page().locator("#text")).hasValue(oneMachine());
    }

    @Test
    void twoWindows_savingBoth_loseNothing() throws IOException {
        String path = imported(oneMachine());
        open(path + "/file");
        Page other = page().context().newPage();
        other.navigate(url(path + "/file"));
        other.locator("#text").fill(oneMachine() + "# theirs\n");
        other.locator("button.main").click();
        other.waitForURL(CASE);
        page().locator("#text").fill(oneMachine() + "# mine\n");
        button("Save").click();
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("Changed in another window");
        expectTrouble("409");
        expectTrouble("404");
        assertThat(page().locator(".lines .gone")).containsText("# theirs");
        assertThat(page().locator("#text")).hasValue(oneMachine() + "# mine\n");
    }

    @Test
    void archive_restoreAndDelete_takeTwoSteps() throws IOException {
        String path = imported(oneMachine());
        open(path + "/rename");
        page().getByLabel("Name in the list").fill("For the archive");
        button("Rename").click();
        button("Archive For the archive").click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("For the archive");
        button("Take it back").click();
        assertThat(link("For the archive")).isVisible();
        button("Archive For the archive").click();
        open("/cases/archived");
        link("Delete for good: For the archive").click();
        assertThat(page().locator("h1")).hasText("Delete for good?");
        button("Delete for good").click();
        assertThat(link("For the archive")).hasCount(0);
    }

    @Test
    void keyboardAlone_fromTheListToANewCase() {
        open("/");
        page().keyboard().press("Tab");
        assertThat(page().locator(":focus")).hasText("Skip to the content");
        tabTo("New case");
        page().keyboard().press("Enter");
        assertThat(page().locator("h1")).hasText("Eight questions, then an answer");
        while (!"alike".equals(focused("id"))) {
            page().keyboard().press("Tab");
        }
        page().keyboard().type("2");
        tabTo("Answer it");
        page().keyboard().press("Enter");
        page().waitForURL(CASE);
        expectTrouble("404");
    }

    private void tabTo(String text) {
        for (int i = 0; i < 100; i++) {
            page().keyboard().press("Tab");
            if (text.equals(focused("textContent").strip())) {
                return;
            }
        }
        throw new AssertionError("not reached by Tab: " + text);
    }

    private String focused(String property) {
        return String.valueOf(page().evaluate("p => document.activeElement[p]", property));
    }

    @ParameterizedTest
    @CsvSource({"375, false", "375, true", "1280, false", "1280, true", "1920, false", "1920, true"})
    void everyPage_atEveryWidth_isAccessible(int width, boolean dark) throws IOException {
        look(width, dark);
        String path = imported(oneMachine());
        for (String each : new String[] {
            "/",
            "/cases/new",
            "/cases/import",
            "/cases/archived",
            "/nope",
            path + "/history",
            path + "/file",
            path + "/rename"
        }) {
            open(each);
            assertAccessible();
        }
        open("/cases/import");
        page().locator("#text").fill("format: footing-case/1\ntitle: x\n");
        button("Import").click();
        assertThat(page().locator(".problems li").first()).isVisible();
        assertAccessible();
        open("/cases/new");
        page().getByLabel("How many alike").fill("several");
        button("Answer it").click();
        assertThat(page().getByRole(AriaRole.ALERT)).isVisible();
        assertAccessible();
        open(path + "/file");
        page().locator("#text").fill(oneMachine() + "# more\n");
        button("Save").click();
        page().waitForURL(CASE);
        open(path + "/history");
        page().getByText("What changed").first().click();
        assertAccessible();
        expectTrouble("422");
        expectTrouble("404");
    }
}
