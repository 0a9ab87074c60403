package footing.core.fleet;

/** Where a number in force comes from. */
public enum Origin {
    /** The user's own. */
    STATED,
    /** In the case, marked there as a guess. */
    GUESSED,
    /** From the shop's records. */
    LEARNED,
    /** From a catalog of typical figures, not a quote. */
    TYPICAL,
    /** Nobody stated it. */
    DEFAULT;

    /** True if nobody knows it: what is asked whether it could turn an answer. */
    public boolean isGuess() {
        return this == GUESSED || this == DEFAULT;
    }
}
