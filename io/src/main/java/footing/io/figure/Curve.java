package footing.io.figure;

import footing.core.chance.Metalog;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The small curve of a three-point: its density, drawn from its 1st to its 99th percentile into a box of 100 by 24.
 *
 * <p>With the quantile function x(y) the density at x(y) is dy/dx, here by differences over equal steps of the logit.
 */
public record Curve(String path, double lowAt, double likelyAt, double highAt) {
    private static final int STEPS = 48;
    private static final double LOGIT_END = Math.log(99);
    private static final double WIDTH = 100;
    private static final double HEIGHT = 24;

    public static Curve of(Metalog m) {
        double[] x = new double[STEPS + 1];
        double[] y = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double logit = LOGIT_END * (2.0 * i / STEPS - 1);
            y[i] = 1 / (1 + Math.exp(-logit));
            x[i] = m.quantile(y[i]);
        }
        List<double[]> points = new ArrayList<>();
        double tallest = 0;
        for (int i = 0; i < STEPS; i++) {
            double density = (y[i + 1] - y[i]) / Math.max(x[i + 1] - x[i], 1e-300);
            points.add(new double[] {(x[i] + x[i + 1]) / 2, density});
            tallest = Math.max(tallest, density);
        }
        double from = x[0];
        double width = x[STEPS] - from;
        StringBuilder path = new StringBuilder("M0 24");
        for (double[] p : points) {
            path.append(String.format(
                    Locale.ROOT, " L%.1f %.1f", WIDTH * (p[0] - from) / width, HEIGHT * (1 - 0.92 * p[1] / tallest)));
        }
        path.append(" L100 24");
        return new Curve(
                path.toString(),
                WIDTH * (m.low() - from) / width,
                WIDTH * (m.likely() - from) / width,
                WIDTH * (m.high() - from) / width);
    }
}
