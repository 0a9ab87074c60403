package footing.core.ground;

import java.util.Arrays;
import java.util.List;

/**
 * The measures of a print from points along its border: the area they enclose, the length and width of the rectangle
 * around it, and the shape exponent that a {@link SuperEllipse} of this area and rectangle has.
 *
 * <p>The rectangle is the smallest one that encloses the border and is turned by no more than 45° from the direction
 * of rolling; its sides are means over the outermost hundredth of the points, so that a single one doesn't set them.
 * Derived geometry, no source.
 *
 * @param area in m²
 * @param length along the rolling direction, in m
 * @param width across, in m
 * @param shape exponent, {@value #LEAST_SHAPE} to {@value #MOST_SHAPE}
 * @param misfit root mean square distance of the border from that super-ellipse, as a share of √area
 */
public record PrintOutline(double area, double length, double width, double shape, double misfit) {
    public static final double LEAST_SHAPE = 1;
    /** Above it a print is a rectangle. */
    public static final double MOST_SHAPE = 20;

    private static final int FEWEST_POINTS = 12;
    private static final double OUTERMOST = 0.01;
    private static final double STEP = Math.toRadians(0.5);
    private static final int FINER = 20;

    public PrintOutline {
        Require.above("the area of a print", 0, area);
        Require.above("the length of a print", 0, length);
        Require.above("the width of a print", 0, width);
        Require.within("the shape of a print", LEAST_SHAPE, MOST_SHAPE, shape);
        Require.within("a misfit", 0, Double.MAX_VALUE, misfit);
    }

    /** A point of the border in m, in any frame. */
    public record Point(double x, double y) {}

    /**
     * Measures a border that doesn't cross itself.
     *
     * @param border in order, at least 12 points, dense where it bends
     * @param rolling direction of rolling as an angle from the x axis, in radians
     */
    public static PrintOutline of(List<Point> border, double rolling) {
        if (border.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException("a border of " + border.size() + " points");
        }
        double area = enclosed(border);
        Require.above("the area of a print", 0, area);
        double turned = turned(border, rolling);
        double[] along = project(border, turned);
        double[] across = project(border, turned + Math.PI / 2);
        double length = extent(along);
        double width = extent(across);
        double shape = SuperEllipse.shapeOf(Math.min(1, area / (length * width)));
        double misfit = misfit(along, across, new double[] {length, width, shape}) / Math.sqrt(area);
        return new PrintOutline(area, length, width, shape, misfit);
    }

    private static double enclosed(List<Point> border) {
        double twice = 0;
        for (int i = 0; i < border.size(); i++) {
            Point a = border.get(i);
            Point b = border.get((i + 1) % border.size());
            twice += a.x * b.y - b.x * a.y;
        }
        return Math.abs(twice) / 2;
    }

    /** The turn at which the rectangle is smallest; of equal ones that nearest to the rolling direction. */
    private static double turned(List<Point> border, double rolling) {
        double coarse = smallest(border, rolling, STEP, (int) Math.round(Math.PI / 4 / STEP));
        return smallest(border, coarse, STEP / FINER, FINER);
    }

    private static double smallest(List<Point> border, double about, double step, int steps) {
        double best = Double.MAX_VALUE;
        double at = about;
        for (int i = 0; i <= 2 * steps; i++) {
            double turn = about + (i % 2 == 0 ? i / 2 : -(i + 1) / 2) * step;
            double area = spread(project(border, turn)) * spread(project(border, turn + Math.PI / 2));
            if (area < best * (1 - 1e-9)) {
                best = area;
                at = turn;
            }
        }
        return at;
    }

    private static double[] project(List<Point> border, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return border.stream().mapToDouble(p -> p.x * cos + p.y * sin).toArray();
    }

    private static double spread(double[] values) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (double v : values) {
            low = Math.min(low, v);
            high = Math.max(high, v);
        }
        return high - low;
    }

    private static double extent(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int few = (int) Math.ceil(OUTERMOST * sorted.length);
        double low = Arrays.stream(sorted, 0, few).average().orElseThrow();
        double high = Arrays.stream(sorted, sorted.length - few, sorted.length)
                .average()
                .orElseThrow();
        return high - low;
    }

    /** Along the ray from the middle a super-ellipse is reached at ρ^(−1/n), where ρ = |2x/l|ⁿ + |2y/w|ⁿ. */
    private static double misfit(double[] along, double[] across, double[] fit) {
        double x = middle(along);
        double y = middle(across);
        double sum = 0;
        for (int i = 0; i < along.length; i++) {
            double u = Math.abs(2 * (along[i] - x) / fit[0]);
            double v = Math.abs(2 * (across[i] - y) / fit[1]);
            double reach = Math.pow(Math.pow(u, fit[2]) + Math.pow(v, fit[2]), 1 / fit[2]);
            double off = reach > 0 ? Math.hypot(along[i] - x, across[i] - y) * (1 - 1 / reach) : 0;
            sum += off * off;
        }
        return Math.sqrt(sum / along.length);
    }

    private static double middle(double[] values) {
        return (Arrays.stream(values).min().orElseThrow()
                        + Arrays.stream(values).max().orElseThrow())
                / 2;
    }
}
