package footing.web.serve;

import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A test that asks a server of its own, with the two example cases, over HTTP. */
public abstract class Served {
    @TempDir
    private static @Nullable Path folder;

    private static @Nullable Server server;

    @BeforeAll
    static void startServer() throws NotServed {
        server = Server.start(new ServerOptions(0, ServerOptions.THIS_MACHINE, Objects.requireNonNull(folder)));
    }

    @AfterAll
    static void stopServer() {
        if (server != null) {
            server.close();
        }
    }

    protected static Server server() {
        return Objects.requireNonNull(server);
    }

    protected static Visitor visitor() {
        return new Visitor(server());
    }
}
