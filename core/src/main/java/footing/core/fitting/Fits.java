package footing.core.fitting;

/** What came of a test. */
public enum Fits {
    FITS,
    /** Something is unknown or too close to call; one measurement would settle it. */
    CHECK,
    DOES_NOT_FIT;

    Fits worse(Fits other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
