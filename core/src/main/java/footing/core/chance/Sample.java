package footing.core.chance;

import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;

/** A sample of equally likely values. */
public final class Sample {
    private final double[] values;
    private final double mean;

    /**
     * @param values at least one; not copied, not changed
     */
    public Sample(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("an empty sample");
        }
        this.values = values;
        double sum = 0;
        for (double x : values) {
            sum += x;
        }
        mean = sum / values.length;
    }

    public double mean() {
        return mean;
    }

    /** Standard error of the mean, s/√n with s of n − 1; 0 for a single value. */
    public double standardError() {
        int n = values.length;
        double squares = 0;
        for (double x : values) {
            squares += (x - mean) * (x - mean);
        }
        return n < 2 ? 0 : Math.sqrt(squares / (n - 1.0) / n);
    }

    /**
     * Percentiles by linear interpolation between order statistics, h = (n − 1)p.
     *
     * <p>Source: R. J. Hyndman, Y. Fan, "Sample Quantiles in Statistical Packages", American Statistician 50(4), 1996,
     * definition 7.
     *
     * @param shares each in (0, 1)
     */
    public double[] percentiles(double... shares) {
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        percentile.setData(values);
        double[] found = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            found[i] = percentile.evaluate(100 * shares[i]);
        }
        return found;
    }

    /** The share of values greater than 0. */
    public static double shareAboveZero(double[] values) {
        int above = 0;
        for (double x : values) {
            above += x > 0 ? 1 : 0;
        }
        return (double) above / values.length;
    }
}
