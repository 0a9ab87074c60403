package footing.io.photo;

import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Gamma;

/**
 * What encloses a print: the area of its hull, and the sides of the smallest rectangle around it.
 *
 * @param area in the square of the unit of the sides
 */
record Outline(double area, double longSide, double shortSide) {
    private static final double LEAST_EXPONENT = 1;
    private static final double MOST_EXPONENT = 40;

    /** The smallest rectangle has a side along an edge of the hull (H. Freeman, R. Shapira, 1975). */
    static Outline of(List<Spot> hull, double scale) {
        double area = 0;
        double best = Double.POSITIVE_INFINITY;
        double one = 0;
        double other = 0;
        for (int i = 0; i < hull.size(); i++) {
            Spot a = hull.get(i);
            Spot b = hull.get((i + 1) % hull.size());
            area += (a.x() * b.y() - b.x() * a.y()) / 2;
            double length = a.to(b);
            if (!(length > 0)) {
                continue;
            }
            double[] along = reach(hull, (b.x() - a.x()) / length, (b.y() - a.y()) / length);
            if (along[0] * along[1] < best) {
                best = along[0] * along[1];
                one = along[0];
                other = along[1];
            }
        }
        double k = scale;
        return new Outline(Math.abs(area) / (k * k), Math.max(one, other) / k, Math.min(one, other) / k);
    }

    private static double[] reach(List<Spot> hull, double dx, double dy) {
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Spot s : hull) {
            double[] at = {s.x() * dx + s.y() * dy, s.y() * dx - s.x() * dy};
            for (int i = 0; i < 2; i++) {
                least[i] = Math.min(least[i], at[i]);
                most[i] = Math.max(most[i], at[i]);
            }
        }
        return new double[] {most[0] - least[0], most[1] - least[1]};
    }

    /**
     * The exponent n of the super-ellipse |2x/l|ⁿ + |2y/w|ⁿ = 1 that fills as much of its rectangle as the hull does:
     * c(n) = Γ(1+1/n)²/Γ(1+2/n) = area/(l·w). From 1 (a diamond) to 40 (a rectangle).
     */
    double exponent() {
        double filled = area / (longSide * shortSide);
        if (filled <= share(LEAST_EXPONENT)) {
            return LEAST_EXPONENT;
        }
        if (filled >= share(MOST_EXPONENT)) {
            return MOST_EXPONENT;
        }
        return new BrentSolver(1e-6).solve(100, n -> share(n) - filled, LEAST_EXPONENT, MOST_EXPONENT);
    }

    static double share(double n) {
        return Math.exp(2 * Gamma.logGamma(1 + 1 / n) - Gamma.logGamma(1 + 2 / n));
    }
}
