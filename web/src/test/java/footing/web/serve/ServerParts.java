package footing.web.serve;

/** Parts of a running server, for tests that need to look inside. */
public final class ServerParts {
    private ServerParts() {}

    public static <T> T of(Server server, String name, Class<T> type) {
        return server.part(name, type);
    }
}
