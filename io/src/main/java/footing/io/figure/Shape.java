package footing.io.figure;

/** What is drawn at a point. */
public enum Shape {
    LINE,
    BAR,
    /** From one value to another. */
    SPAN,
    /** The stretch between two edges around the line of the same name, from place to place. */
    BAND
}
