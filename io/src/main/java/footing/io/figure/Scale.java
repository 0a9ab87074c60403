package footing.io.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A scale of money around zero for the rows of a page: where a value lies, from 0 to {@value #WIDTH}, and ticks at round
 * values.
 */
public record Scale(double least, double most, double step) {
    public static final int WIDTH = 1000;
    private static final double ROOM = 0.04;
    private static final int ABOUT_TICKS = 4;

    /** Holds zero and every end of a figure's spans, with a little room. */
    public static Scale of(Figure figure) {
        double least = 0;
        double most = 0;
        for (Series s : figure.series()) {
            for (Point p : s.points()) {
                Point.Span span = p.span();
                double from = span == null ? p.value() : Math.min(p.value(), Math.min(span.from(), span.to()));
                double to = span == null ? p.value() : Math.max(p.value(), Math.max(span.from(), span.to()));
                least = Math.min(least, from);
                most = Math.max(most, to);
            }
        }
        double width = Math.max(most - least, 1);
        return new Scale(least - ROOM * width, most + ROOM * width, Spreading.niceStep(width / ABOUT_TICKS));
    }

    /** Where a value lies, in thousandths of the width. */
    public double at(double value) {
        return WIDTH * (value - least) / (most - least);
    }

    /** Round values inside, zero among them. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (double t = Math.ceil(least / step); t * step <= most; t++) {
            ticks.add(t * step + 0.0);
        }
        return ticks;
    }
}
