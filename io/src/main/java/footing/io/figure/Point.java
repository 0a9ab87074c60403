package footing.io.figure;

import org.jspecify.annotations.Nullable;

/**
 * A value at a place.
 *
 * @param at on the axis of places: a number, or an index into its names
 * @param value on the axis of values; of a span its mark, such as the mean
 */
public record Point(double at, double value, @Nullable Span span) {
    /** From one value to another, not necessarily upward, with what stands at either end. */
    public record Span(double from, double to, String fromNote, String toNote) {
        public Span {
            finite(from);
            finite(to);
        }
    }

    public Point {
        finite(at);
        finite(value);
    }

    static Point of(double at, double value) {
        return new Point(at, value, null);
    }

    static Point range(double at, double value, double from, double to) {
        return new Point(at, value, new Span(from, to, "", ""));
    }

    private static void finite(double x) {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a point can't be at " + x);
        }
    }
}
