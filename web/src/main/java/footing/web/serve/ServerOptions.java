package footing.web.serve;

import java.nio.file.Path;

/**
 * How to serve.
 *
 * @param port 0 for any that is free
 * @param address to listen on; any but this machine's own needs a password
 * @param data folder of the cases; made if missing
 */
public record ServerOptions(int port, String address, Path data) {
    public static final int USUAL_PORT = 8300;
    public static final int HIGHEST_PORT = 65_535;
    public static final String THIS_MACHINE = "127.0.0.1";

    public ServerOptions {
        if (!(port >= 0 && port <= HIGHEST_PORT)) {
            throw new IllegalArgumentException("port " + port + ": between 0 and " + HIGHEST_PORT + " would fit");
        }
    }

    /** The data folder where none is named. */
    public static Path usualData() {
        return Path.of(System.getProperty("user.home"), ".footing");
    }
}
