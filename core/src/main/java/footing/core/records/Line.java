package footing.core.records;

import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A straight line by least squares, and backwards: where it reaches a value.
 *
 * <p>Source: E. C. Fieller, "Some Problems in Interval Estimation", Journal of the Royal Statistical Society B 16
 * (1954) 175–185; F. A. Graybill, H. K. Iyer, "Regression Analysis: Concepts and Applications", 1994, pages 427–434.
 */
public final class Line {
    private static final double T_ACCURACY = 1e-14;

    private final int n;
    private final double meanX;
    private final double meanY;
    private final double slope;
    private final double squaresX;
    private final double residual;

    private Line(int n, double meanX, double meanY, double[] sums) {
        this.n = n;
        this.meanX = meanX;
        this.meanY = meanY;
        squaresX = sums[0];
        slope = sums[1] / sums[0];
        residual = sums[2];
    }

    /**
     * The line of least squares.
     *
     * @throws IllegalArgumentException with fewer than two different x
     */
    public static Line of(double[] x, double[] y) {
        int n = x.length;
        if (n != y.length || n < 2) {
            throw new IllegalArgumentException("a line through " + n + " and " + y.length + " values, needs two");
        }
        double meanX = mean(x);
        double meanY = mean(y);
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < n; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        if (!(xx > 0)) {
            throw new IllegalArgumentException("a line through values all at " + meanX);
        }
        double residual = 0;
        for (int i = 0; i < n; i++) {
            double off = y[i] - meanY - xy / xx * (x[i] - meanX);
            residual += off * off;
        }
        return new Line(n, meanX, meanY, new double[] {xx, xy, residual});
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        double mean = sum / values.length;
        double rest = 0;
        for (double v : values) {
            rest += v - mean;
        }
        return mean + rest / values.length;
    }

    public int n() {
        return n;
    }

    public double meanX() {
        return meanX;
    }

    public double meanY() {
        return meanY;
    }

    public double slope() {
        return slope;
    }

    public double intercept() {
        return meanY - slope * meanX;
    }

    /** Σ(x − x̄)². */
    public double squaresX() {
        return squaresX;
    }

    /** Sum of squared residuals. */
    public double residual() {
        return residual;
    }

    /** Mean square of the residuals, over n − 2; NaN with two points. */
    public double meanSquare() {
        return n > 2 ? residual / (n - 2) : Double.NaN;
    }

    public double slopeError() {
        return Math.sqrt(meanSquare() / squaresX);
    }

    public double at(double x) {
        return meanY + slope * (x - meanX);
    }

    /** Limits of the line at x ({@code more} 0), or of the mean of m new readings there ({@code more} 1/m). */
    public Limits limits(double x, double more, double share) {
        double off = x - meanX;
        double width = t(share) * Math.sqrt(meanSquare() * (more + 1.0 / n + off * off / squaresX));
        return new Limits(at(x) - width, at(x) + width);
    }

    /** Where the line reaches y. */
    public double reaching(double y) {
        return meanX + (y - meanY) / slope;
    }

    /**
     * Limits of where the line reaches y: x̄ + (d/b ± (t s/b)√((1−g)(k+1/n) + (d/b)²/Sxx))/(1−g) with d = y − ȳ, k =
     * {@code more} and g = t²s²/(b²Sxx). Empty if g ≥ 1: then the slope can't be told from none and no limits exist.
     */
    public Optional<Limits> reachingLimits(double y, double more, double share) {
        double t = t(share);
        double g = t * t * meanSquare() / (slope * slope * squaresX);
        if (!(g < 1)) {
            return Optional.empty();
        }
        double d = (y - meanY) / slope;
        double width = t * Math.sqrt(meanSquare()) / slope * Math.sqrt((1 - g) * (more + 1.0 / n) + d * d / squaresX);
        return Optional.of(Limits.sorted(meanX + (d - width) / (1 - g), meanX + (d + width) / (1 - g)));
    }

    private double t(double share) {
        if (n < 3) {
            throw new IllegalStateException("limits of a line through " + n + " points");
        }
        return new TDistribution(n - 2, T_ACCURACY).inverseCumulativeProbability((1 + Limits.checked(share)) / 2);
    }
}
