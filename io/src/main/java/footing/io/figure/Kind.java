package footing.io.figure;

/** How a figure is laid out. */
public enum Kind {
    /** Values over a numeric axis. */
    LINES,
    /** Bars side by side, standing on named places or on steps of a numeric axis. */
    BARS,
    /** Named rows with a bar from one value to another and a mark between. */
    RANGES,
    /** Named rows with lying bars one after the other; what is below zero goes to the left. */
    STACKED,
    /** Named rows with spans of time. */
    TIMELINE,
    /** Two upright scales, one for each of two series, and a line from one to the other for each named place. */
    PAIRS
}
