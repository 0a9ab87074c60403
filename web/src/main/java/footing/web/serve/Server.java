package footing.web.serve;

import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.ContextClosedEvent;

/** The page, running. */
public final class Server implements AutoCloseable {
    private final ServletWebServerApplicationContext context;
    private final ServerOptions options;
    private final CountDownLatch ended = new CountDownLatch(1);

    private Server(ServletWebServerApplicationContext context, ServerOptions options) {
        this.context = context;
        this.options = options;
        context.addApplicationListener((ContextClosedEvent e) -> ended.countDown());
    }

    /** Starts and returns once pages are served. */
    public static Server start(ServerOptions options) throws IOException {
        Files.createDirectories(options.data());
        SpringApplication application = new SpringApplication(Application.class);
        application.setDefaultProperties(properties(options));
        return new Server((ServletWebServerApplicationContext) application.run(), options);
    }

    private static Map<String, Object> properties(ServerOptions options) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("server.port", options.port());
        properties.put("server.address", options.address());
        properties.put("footing.data", options.data().toString());
        properties.put(
                "spring.datasource.url",
                "jdbc:sqlite:" + options.data().resolve("footing.db").toAbsolutePath()
                        + "?journal_mode=WAL&synchronous=FULL&foreign_keys=true&busy_timeout=5000"
                        + "&transaction_mode=IMMEDIATE");
        return properties;
    }

    /** Where the page is. */
    public String url() {
        String host = options.address().contains(":") ? "[" + options.address() + "]" : options.address();
        return "http://" + host + ":" + port() + "/";
    }

    public int port() {
        var server = context.getWebServer();
        return server == null ? 0 : server.getPort();
    }

    /** Waits until it is closed or the program is told to end. */
    public void awaitEnd() throws InterruptedException {
        ended.await();
    }

    @Override
    public void close() {
        context.close();
    }
}
