package footing.core.follow;

/** How what came stands to what was due. */
public enum Standing {
    AS_EXPECTED,
    MORE,
    LESS,
    /** Fewer than one flat (or set) was due, and what came lies within the band. */
    TOO_EARLY,
    /** Some flats have no minutes or no cost written down, so nothing can be said. */
    NOT_WRITTEN
}
