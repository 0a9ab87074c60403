package footing.core.trial;

/** What a trial shows. */
public enum Verdict {
    /** The difference lies inside the margin. */
    ALIKE,
    /** A has the larger value; the interval of the difference is clear of zero. */
    A_MORE,
    B_MORE,
    NOT_ENOUGH
}
