package footing.io.figure;

/** The kind of a line. What a machine carries now is always dashed, and nothing else is. */
public enum Stroke {
    DASHED,
    SOLID,
    DOTTED,
    DASH_DOT,
    LONG_DASH,
    DASH_DOT_DOT
}
