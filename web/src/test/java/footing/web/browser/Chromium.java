package footing.web.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/** The one Chromium of a test run; it is started when first asked for and ends with the run. */
final class Chromium {
    private static final String LEAVE_OUT = "FOOTING_NO_BROWSER";
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    private static @Nullable Browser browser;

    private Chromium() {}

    static synchronized Browser get() {
        Browser running = browser;
        if (running == null) {
            running = start();
            browser = running;
        }
        return running;
    }

    private static Browser start() {
        Optional<Path> program =
                NAMES.stream().flatMap(n -> onThePath(n).stream()).findFirst();
        if (program.isEmpty()) {
            leaveOut();
        }
        Map<String, String> environment = new HashMap<>(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"));
        onThePath("node").ifPresent(node -> environment.putIfAbsent("PLAYWRIGHT_NODEJS_PATH", node.toString()));
        if (System.getProperty("browser.bundle") != null) {
            environment.remove("PLAYWRIGHT_NODEJS_PATH");
        }
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        Browser started = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program.orElseThrow())
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close, "chromium-end"));
        return started;
    }

    /** Without a browser the tests fail, unless whoever runs them has said that there is to be none. */
    private static void leaveOut() {
        if (System.getenv(LEAVE_OUT) == null) {
            throw new IllegalStateException("No Chromium on the PATH. On Debian, as root: apt-get install chromium."
                    + " To do without the browser tests, set " + LEAVE_OUT + "=1.");
        }
        Assumptions.abort("BROWSER TESTS LEFT OUT: no Chromium, and " + LEAVE_OUT + " is set");
    }

    private static Optional<Path> onThePath(String name) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .map(place -> Path.of(place, name))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
