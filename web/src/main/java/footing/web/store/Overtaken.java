package footing.web.store;

/** Somebody else changed the case first; nothing was saved. */
public final class Overtaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient StoredCase now;

    Overtaken(StoredCase now) {
        super("the case stands at version " + now.version());
        this.now = now;
    }

    /** The case as it stands. */
    public StoredCase now() {
        return now;
    }
}
