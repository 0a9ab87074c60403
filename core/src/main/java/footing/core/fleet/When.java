package footing.core.fleet;

/** When a machine changes to a package: at once, or each position when its set is next worn out. */
public enum When {
    NOW,
    WORN
}
