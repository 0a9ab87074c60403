package footing.core.chance;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The distribution of a quantity of which somebody states a low, a likely and a high value: its 10th, 50th and 90th
 * percentile.
 *
 * <p>Keelin's symmetric-percentile-triplet metalog. With the transform g of its {@link Bounds} (ln or logit),
 * L = g(low), M = g(likely), H = g(high) and ℓ(y) = ln(y/(1−y)), the quantile function is
 *
 * <pre>x(y) = g⁻¹( M + (H−L)/(2 ln 9) · ℓ(y) + (H+L−2M)/(0.8 ln 9) · (y−½) · ℓ(y) ).</pre>
 *
 * It is increasing only if (M−L)/(H−L) lies within {@value #LEAST_POSITION} to {@value #MOST_POSITION}. Draws and
 * means use y clipped to {@value #LEAST_Y}–{@value #MOST_Y}: what lies beyond one in two hundred was never stated.
 *
 * <p>Source: T. W. Keelin, "The Metalog Distributions", Decision Analysis 13(4), 2016.
 */
public final class Metalog implements Spread {
    public static final double LEAST_POSITION = 0.1666;
    public static final double MOST_POSITION = 0.8334;
    public static final double LEAST_Y = 0.005;
    public static final double MOST_Y = 0.995;

    /** The limits of {@link #position} leave twenty times this to the infeasible. */
    private static final double ROUNDING = 1e-6;

    private static final double LN9 = Math.log(9);
    private static final double LOGIT_MOST = Math.log(MOST_Y / (1 - MOST_Y));
    private static final int NEWTON_STEPS = 100;
    private static final int PANELS = 24;
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(24);

    private final double low;
    private final double likely;
    private final double high;
    private final Bounds bounds;
    private final boolean positive;
    private final double center;
    private final double slope;
    private final double skew;

    /**
     * @throws IllegalArgumentException if the values are out of order, equal, outside the bounds or infeasible
     */
    public Metalog(double low, double likely, double high, Bounds bounds) {
        this(low, likely, high, bounds, 0);
    }

    /** @param leeway how far outside the feasible positions rounding may have put the likely value */
    private Metalog(double low, double likely, double high, Bounds bounds, double leeway) {
        if (!(low < likely && likely < high)) {
            throw new IllegalArgumentException("not in increasing order: " + low + ", " + likely + ", " + high);
        }
        if (!(bounds.contains(low) && bounds.contains(high))) {
            throw new IllegalArgumentException(low + " to " + high + " leaves the bounds " + bounds);
        }
        double position = position(low, likely, high, bounds);
        if (!(position >= LEAST_POSITION - leeway && position <= MOST_POSITION + leeway)) {
            throw new IllegalArgumentException("likely value sits at " + position + " of the transformed range");
        }
        this.low = low;
        this.likely = likely;
        this.high = high;
        this.bounds = bounds;
        positive = bounds == Bounds.POSITIVE;
        double l = bounds.transform(low);
        double h = bounds.transform(high);
        center = bounds.transform(likely);
        slope = (h - l) / (2 * LN9);
        skew = (h + l - 2 * center) / (0.8 * LN9);
    }

    /** Where the likely value sits between low and high after the transform: (M−L)/(H−L). */
    public static double position(double low, double likely, double high, Bounds bounds) {
        double l = bounds.transform(low);
        return (bounds.transform(likely) - l) / (bounds.transform(high) - l);
    }

    /** The value at a position of the transformed range, the inverse of {@link #position}: what would fit. */
    public static double valueAt(double position, double low, double high, Bounds bounds) {
        double l = bounds.transform(low);
        return bounds.back(l + position * (bounds.transform(high) - l));
    }

    public double low() {
        return low;
    }

    @Override
    public double likely() {
        return likely;
    }

    public double high() {
        return high;
    }

    public Bounds bounds() {
        return bounds;
    }

    /**
     * The quantile at y in (0, 1), not clipped.
     *
     * @throws IllegalArgumentException outside (0, 1)
     */
    public double quantile(double y) {
        if (!(y > 0 && y < 1)) {
            throw new IllegalArgumentException("no quantile at " + y);
        }
        return quantile(y, Math.log(y / (1 - y)));
    }

    /** The quantile at y, its logit already known; the caller vouches for both. */
    public double quantile(double y, double logit) {
        double z = center + (slope + skew * (y - 0.5)) * logit;
        return positive ? Math.exp(z) : bounds.back(z);
    }

    @Override
    public double draw(double y) {
        return quantile(Math.min(Math.max(y, LEAST_Y), MOST_Y));
    }

    /**
     * {@inheritDoc} The inverse of {@link #quantile}, by Newton steps on the logit scale kept inside a bracket, to a
     * few units in the last place.
     */
    @Override
    public double cumulative(double x) {
        if (!bounds.contains(x)) {
            return x > 0 ? 1 : 0;
        }
        double target = bounds.transform(x);
        double lower = -745;
        double upper = 745;
        double z = Math.min(Math.max((target - center) / slope, -30), 30);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double y = 1 / (1 + Math.exp(-z));
            double error = center + (slope + skew * (y - 0.5)) * z - target;
            lower = error <= 0 ? z : lower;
            upper = error >= 0 ? z : upper;
            double next = z - error / (slope + skew * (y - 0.5) + skew * y * (1 - y) * z);
            next = next > lower && next < upper ? next : (lower + upper) / 2;
            double step = Math.abs(next - z);
            z = next;
            if (step <= 1e-14 * Math.max(1, Math.abs(z))) {
                break;
            }
        }
        return 1 / (1 + Math.exp(-z));
    }

    /**
     * {@inheritDoc} That is ∫₀¹ x(clip(y)) dy: both clipped ends as they are, the rest by panels of 24 Gauss–Legendre
     * points on the logit scale (relative 1e-13, also for shares that rise from near 0 to near 1 at once).
     */
    @Override
    public double mean() {
        double half = LOGIT_MOST / PANELS;
        double inside = 0;
        for (int panel = 0; panel < PANELS; panel++) {
            double middle = (2 * panel + 1) * half - LOGIT_MOST;
            inside += half * GAUSS.integrate(at -> weighted(middle + half * at));
        }
        return inside + LEAST_Y * (quantile(LEAST_Y) + quantile(MOST_Y));
    }

    /** The quantile at a logit, times dy for a step of the logit. */
    private double weighted(double logit) {
        double y = 1 / (1 + Math.exp(-logit));
        return quantile(y, logit) * y * (1 - y);
    }

    @Override
    public Spread times(double factor) {
        if (factor == 0) {
            return new Fixed(0);
        }
        return new Metalog(low * factor, likely * factor, high * factor, bounds, ROUNDING);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Metalog m && m.low == low && m.likely == likely && m.high == high && m.bounds == bounds;
    }

    @Override
    public int hashCode() {
        return java.util.Objects.hash(low, likely, high, bounds);
    }

    @Override
    public String toString() {
        return "{low: " + low + ", likely: " + likely + ", high: " + high + "}";
    }
}
