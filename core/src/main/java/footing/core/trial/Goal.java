package footing.core.trial;

/** Which way a measured value is better. */
public enum Goal {
    MORE,
    LESS,
    /** Neither more nor less is better by itself: a print or a height is a fact. */
    NEITHER
}
