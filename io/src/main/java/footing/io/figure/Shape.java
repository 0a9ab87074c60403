package footing.io.figure;

/** What is drawn at a point. */
public enum Shape {
    LINE,
    BAR,
    /** From one value to another. */
    SPAN
}
