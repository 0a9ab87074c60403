package footing.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import footing.web.serve.NotServed;
import footing.web.serve.Server;
import footing.web.serve.ServerOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;
import org.junit.jupiter.api.io.TempDir;

/**
 * A test in a real browser: a server of its own with the two example cases, for each class one, and a fresh page for
 * each test. A message of the console, a violation of the content policy or a request to another host fails the test.
 */
public abstract class InBrowser {
    /** Milliseconds; a busy machine is not a fault. */
    private static final double PATIENCE = 20_000;

    @TempDir
    private static @Nullable Path folder;

    private static @Nullable Server server;
    private static int port;

    /** Where the server was before the line was cut; null with a line. */
    private static @Nullable String root;

    private final List<String> trouble = new ArrayList<>();
    private @Nullable BrowserContext context;
    private @Nullable Page page;

    @BeforeAll
    static void startServer() throws NotServed {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
        root = null;
        Path data = Objects.requireNonNull(folder);
        server = Server.start(new ServerOptions(0, ServerOptions.THIS_MACHINE, data));
    }

    @AfterAll
    static void stopServer() {
        if (server != null) {
            server.close();
        }
    }

    /** From now on nobody answers, as where there is no line; what was kept stays. */
    protected static void cutLine() {
        port = Objects.requireNonNull(server).port();
        root = url("");
        stopServer();
    }

    /** The same server at the same address again. */
    protected static void mendLine() throws NotServed {
        root = null;
        server = Server.start(new ServerOptions(port, ServerOptions.THIS_MACHINE, Objects.requireNonNull(folder)));
    }

    @BeforeEach
    void openDesktop() {
        look(1280, false);
    }

    @AfterEach
    void closeAndComplain() {
        if (context != null) {
            context.close();
        }
        assertThat(trouble).isEmpty();
    }

    /** A failure says where the browser stood and what it showed: on a machine nobody watches that is all there is. */
    @RegisterExtension
    final TestExecutionExceptionHandler whereItStood = (test, failure) -> {
        throw new AssertionError(failure.getMessage() + "\n" + standing(), failure);
    };

    private String standing() {
        if (page == null) {
            return "no page was open";
        }
        try {
            String shown = page.locator("body").innerText(new Locator.InnerTextOptions().setTimeout(2_000));
            return "at " + page.url() + ", showing: "
                    + shown.substring(0, Math.min(shown.length(), 600)).replaceAll("\\s+", " ") + "; messages: "
                    + trouble;
        } catch (PlaywrightException e) {
            return "at " + page.url() + ", which shows nothing (" + e.getMessage() + "); messages: " + trouble;
        }
    }

    /** Begins anew with a window of a width, light or dark. */
    protected Page look(int width, boolean dark) {
        if (context != null) {
            context.close();
        }
        BrowserContext fresh = Chromium.get()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, width < 600 ? 740 : 900)
                        .setLocale("en-US")
                        .setColorScheme(dark ? ColorScheme.DARK : ColorScheme.LIGHT));
        fresh.onConsoleMessage(m -> {
            if (m.type().equals("error") || m.type().equals("warning")) {
                trouble.add(m.text());
            }
        });
        fresh.onRequest(r -> {
            if (!r.url().startsWith(url(""))
                    && !r.url().startsWith("data:")
                    && !r.url().startsWith("blob:")) {
                trouble.add("asked another host: " + r.url());
            }
        });
        Page blank = fresh.newPage();
        blank.onPageError(trouble::add);
        blank.setDefaultTimeout(15_000);
        context = fresh;
        page = blank;
        return blank;
    }

    /** For tests that cause an error on purpose, such as a form that is refused with 422: forgets its message. */
    protected void expectTrouble(String containing) {
        trouble.removeIf(t -> t.contains(containing));
    }

    protected Page page() {
        Page open = page;
        if (open == null) {
            throw new IllegalStateException("no page is open");
        }
        return open;
    }

    /** The address of a path that begins with a slash. */
    protected static String url(String path) {
        if (root != null) {
            return root + path;
        }
        Server running = server;
        if (running == null) {
            throw new IllegalStateException("no server runs");
        }
        return running.url().replaceAll("/$", "") + path;
    }

    /** Opens a path of the server. */
    protected Page open(String path) {
        page().navigate(url(path));
        return page();
    }

    /** Fails if axe-core finds a violation of WCAG 2.2 AA or its best practices, or the page is wider than its window. */
    protected void assertAccessible() {
        var found = new AxeBuilder(page()).analyze();
        assertThat(found.getViolations())
                .as("axe-core at " + page().url())
                .extracting(v -> v.getId() + ": " + v.getHelp() + " at "
                        + v.getNodes().stream()
                                .map(n -> String.valueOf(n.getTarget()))
                                .toList())
                .isEmpty();
        assertThat(page().evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .as("fits its window: " + page().url())
                .isEqualTo(true);
    }
}
