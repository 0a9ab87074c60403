package footing.core.fleet;

/** Where a number in force comes from. */
public enum Origin {
    /** The user's own. */
    STATED,
    /** From the shop's records. */
    LEARNED,
    /** From a catalog of typical figures, not a quote. */
    TYPICAL,
    /** Nobody stated it. */
    DEFAULT
}
