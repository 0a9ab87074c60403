package footing.core.chance;

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
        mean = sum(values) / values.length;
    }

    /** Four sums side by side: an addition need not wait for the one before it. */
    private static double sum(double[] values) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (; i + 3 < values.length; i += 4) {
            a += values[i];
            b += values[i + 1];
            c += values[i + 2];
            d += values[i + 3];
        }
        for (; i < values.length; i++) {
            a += values[i];
        }
        return a + b + (c + d);
    }

    public double mean() {
        return mean;
    }

    /** The squares of the deviations from the mean, four sums side by side. */
    private double squares() {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (; i + 3 < values.length; i += 4) {
            a += square(values[i] - mean);
            b += square(values[i + 1] - mean);
            c += square(values[i + 2] - mean);
            d += square(values[i + 3] - mean);
        }
        for (; i < values.length; i++) {
            a += square(values[i] - mean);
        }
        return a + b + (c + d);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Standard error of the mean, s/√n with s of n − 1; 0 for a single value. */
    public double standardError() {
        int n = values.length;
        return n < 2 ? 0 : Math.sqrt(squares() / (n - 1.0) / n);
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
        int last = values.length - 1;
        int[] ranks = new int[2 * shares.length];
        for (int i = 0; i < shares.length; i++) {
            int below = (int) (last * shares[i]);
            ranks[2 * i] = below;
            ranks[2 * i + 1] = Math.min(below + 1, last);
        }
        double[] at = new Ranks(values).at(ranks);
        double[] found = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            double between = last * shares[i] - ranks[2 * i];
            found[i] = at[2 * i] + between * (at[2 * i + 1] - at[2 * i]);
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
