package footing.web.serve;

import footing.web.safety.OwnFolder;
import footing.web.safety.PasswordFile;
import footing.web.store.DataFile;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.core.NestedExceptionUtils;

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

    /**
     * Starts, and returns once pages are served.
     *
     * @throws NotServed if the address needs a password, the port is taken, or the data folder can't be used
     */
    public static Server start(ServerOptions options) throws NotServed {
        checkAddress(options);
        SpringApplication application = new SpringApplication(Application.class);
        try {
            OwnFolder.make(options.data());
            application.setDefaultProperties(properties(options));
            return new Server((ServletWebServerApplicationContext) application.run(), options);
        } catch (IOException e) {
            throw new NotServed("the data folder " + options.data() + " can't be made; --data names another");
        } catch (RuntimeException e) {
            throw new NotServed(why(NestedExceptionUtils.getMostSpecificCause(e), options));
        }
    }

    private static String why(Throwable cause, ServerOptions options) {
        String said = String.valueOf(cause.getMessage());
        if (!(cause instanceof BindException) && !(cause instanceof PortInUseException)) {
            return "the page can't be started: " + said;
        }
        return said.contains("in use")
                ? "port " + options.port() + " is taken, perhaps by another Footing; --port "
                        + otherPort(options.port()) + " may be free, and --port 0 finds one that is"
                : "the page can't be served on " + options.address() + " port " + options.port() + ": " + said;
    }

    private static int otherPort(int port) {
        return port < ServerOptions.HIGHEST_PORT ? port + 1 : port - 1;
    }

    private static void checkAddress(ServerOptions options) throws NotServed {
        try {
            boolean isOwn = InetAddress.getByName(options.address()).isLoopbackAddress();
            if (!isOwn && !new PasswordFile(options.data()).isSet()) {
                throw new NotServed("on " + options.address() + " others can reach the page, so it needs a password:"
                        + " set one with footing serve --set-password, or stay on " + ServerOptions.THIS_MACHINE);
            }
        } catch (UnknownHostException e) {
            throw new NotServed("there is no address " + options.address() + "; " + ServerOptions.THIS_MACHINE
                    + " is this machine's own");
        }
    }

    private static Map<String, Object> properties(ServerOptions options) {
        Path data = options.data().toAbsolutePath();
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("server.port", options.port());
        properties.put("server.address", options.address());
        properties.put("footing.data", data.toString());
        properties.put("spring.datasource.url", DataFile.url(data));
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

    /** Runs the reckoning once in the background, so that the first answer asked for comes sooner. */
    public void warm() {
        context.getBean(WarmUp.class).start();
    }

    /** One of the parts it is made of. */
    <T> T part(String name, Class<T> type) {
        return context.getBean(name, type);
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
