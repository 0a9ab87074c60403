package footing.io.form;

/**
 * The stretch of a text a node takes: a collection without brackets ends with the last thing in it.
 *
 * @param line counted from 1
 * @param column counted from 0, in code points
 * @param start first code point, counted from 0
 * @param end just behind the last one
 */
public record Span(int line, int column, int start, int end) {
    /** A place known by its line alone, for a node that stands in no text. */
    public static Span onLine(int line) {
        return new Span(line, 0, 0, 0);
    }
}
