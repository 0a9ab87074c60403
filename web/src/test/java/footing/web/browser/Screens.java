package footing.web.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Takes pictures of the pages for a look by eye: -Dtest=Screens -Dscreens=FOLDER. */
@EnabledIfSystemProperty(named = "screens", matches = ".+")
class Screens extends InBrowser {
    private static final int[] WIDTHS = {375, 1280, 1920};

    @Test
    void everyPage_everyWidth_isPictured() {
        for (int width : WIDTHS) {
            for (boolean dark : new boolean[] {false, true}) {
                look(width, dark);
                String mark = "-" + width + (dark ? "-dark" : "-light");
                cases(mark);
                forms(mark);
                answers(mark, width);
            }
        }
        expectTrouble("422");
        expectTrouble("404");
    }

    private String address(String name) {
        open("/cases");
        return String.valueOf(page().locator(".cases h2 a")
                .filter(new Locator.FilterOptions().setHasText(name))
                .getAttribute("href"));
    }

    private void cases(String mark) {
        String id = address("Quillbrook");
        picture("list" + mark);
        for (String path : new String[] {"/cases/new", "/cases/import", "/cases/archived", "/nope", "/login"}) {
            open(path);
            picture(path.substring(path.lastIndexOf('/') + 1) + mark);
        }
        for (String part : new String[] {"/history", "/file", "/rename"}) {
            open(id + part);
            picture(part.substring(1) + mark);
        }
    }

    private void forms(String mark) {
        open("/cases/import");
        page().locator("#text")
                .fill("format: footing-case/1\ntitle: Broken\nasOf: soon\ncrews:\n  north:\n    peple: 3\n");
        page().locator("button.main").click();
        picture("broken" + mark);
        open("/cases/new");
        page().locator("#alike").fill("many");
        page().locator("button.main").click();
        picture("faulty" + mark);
    }

    private void answers(String mark, int width) {
        String fleet = address("Quillbrook");
        for (String path :
                new String[] {fleet, fleet + "/machines/E1", fleet + "/machines/C1", address("One machine")}) {
            open(path);
            page().waitForFunction(
                            "() => !document.querySelector('.sharpening')",
                            null,
                            new Page.WaitForFunctionOptions().setTimeout(300_000));
            page().locator(".fig .drawing").all().forEach(Locator::scrollIntoViewIfNeeded);
            picture("answer"
                    + path.replaceAll("^/cases/[a-z0-9]+|/machines", "").replace('/', '-')
                    + (path.contains("/machines") || path.equals(fleet) ? "" : "-one") + mark);
        }
        page().locator(".choices .why").nth(2).click();
        page().locator("#why .tree").waitFor();
        page().screenshot(new Page.ScreenshotOptions().setPath(place("why" + mark)));
        page().keyboard().press("Escape");
        if (width < 1120) {
            page().locator("#open-inputs").click();
            page().screenshot(new Page.ScreenshotOptions().setPath(place("drawer" + mark)));
        }
    }

    private static Path place(String name) {
        return Path.of(System.getProperty("screens"), name + ".png");
    }

    private void picture(String name) {
        picture(page(), name);
    }

    /** Takes a picture of a page if pictures are asked for. */
    static void picture(Page page, String name) {
        String folder = System.getProperty("screens");
        if (folder != null) {
            page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(place(name)));
        }
    }
}
