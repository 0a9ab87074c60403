package footing.web.store;

/** A case, or a version of it, that isn't kept: never made, or deleted for good. */
public final class NoSuchCase extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoSuchCase(String id) {
        super("no case " + id);
    }
}
