package footing.web.browser;

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
                Page page = look(width, dark);
                String mark = "-" + width + (dark ? "-dark" : "-light");
                open("/cases");
                String id = page.locator(".cases h2 a").first().getAttribute("href");
                picture("list" + mark);
                for (String path : new String[] {"/cases/new", "/cases/import", "/nope", "/login"}) {
                    open(path);
                    picture(path.substring(path.lastIndexOf('/') + 1) + mark);
                }
                for (String part : new String[] {"/history", "/file", "/rename"}) {
                    open(id + part);
                    picture(part.substring(1) + mark);
                }
                open("/cases/import");
                page.locator("#text")
                        .fill("format: footing-case/1\ntitle: Broken\nasOf: soon\ncrews:\n  north:\n    peple: 3\n");
                page.locator("button.main").click();
                picture("broken" + mark);
                open("/cases/new");
                page.locator("#alike").fill("many");
                page.locator("button.main").click();
                picture("faulty" + mark);
            }
        }
        expectTrouble("422");
        expectTrouble("404");
    }

    private void picture(String name) {
        picture(page(), name);
    }

    /** Takes a picture of a page if pictures are asked for. */
    static void picture(Page page, String name) {
        String folder = System.getProperty("screens");
        if (folder != null) {
            page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(Path.of(folder, name + ".png")));
        }
    }
}
