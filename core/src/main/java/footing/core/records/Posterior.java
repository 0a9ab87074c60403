package footing.core.records;

/**
 * What is known of one positive quantity: its density on even steps of its logarithm, straight in between.
 *
 * <p>Quantiles solve the quadratic that the straight density makes of the distribution function inside a step.
 */
public final class Posterior {
    private final double low;
    private final double step;
    private final double[] density;
    private final double[] below;

    Posterior(double lnLow, double lnHigh, double[] density) {
        this.low = lnLow;
        this.step = (lnHigh - lnLow) / (density.length - 1);
        this.density = density.clone();
        this.below = new double[density.length];
        for (int i = 1; i < density.length; i++) {
            below[i] = below[i - 1] + (density[i - 1] + density[i]) / 2;
        }
        double all = below[density.length - 1];
        if (!(all > 0 && all < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the density adds up to " + all);
        }
        for (int i = 0; i < density.length; i++) {
            this.density[i] /= all;
            below[i] /= all;
        }
    }

    public double quantile(double p) {
        Limits.checked(p);
        int i = 0;
        while (i < below.length - 2 && below[i + 1] < p) {
            i++;
        }
        double rise = (density[i + 1] - density[i]) / 2;
        double rest = p - below[i];
        double root = Math.sqrt(Math.max(density[i] * density[i] + 4 * rise * rest, 0));
        double share = density[i] + root > 0 ? 2 * rest / (density[i] + root) : 0;
        return Math.exp(low + (i + Math.min(share, 1)) * step);
    }

    /** The share of the distribution below x. */
    public double cumulative(double x) {
        double at = (Math.log(x) - low) / step;
        if (!(at > 0)) {
            return 0;
        }
        int i = (int) at;
        if (i >= density.length - 1) {
            return 1;
        }
        double share = at - i;
        return below[i] + density[i] * share + (density[i + 1] - density[i]) / 2 * share * share;
    }

    public double median() {
        return quantile(0.5);
    }

    public Limits limits(double share) {
        double tail = (1 - Limits.checked(share)) / 2;
        return new Limits(quantile(tail), quantile(1 - tail));
    }

    /** Standard deviation of the logarithm. */
    public double deviation() {
        double sum = 0;
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < density.length; i++) {
            double z = low + i * step;
            sum += density[i];
            mean += density[i] * z;
            squares += density[i] * z * z;
        }
        mean /= sum;
        return Math.sqrt(Math.max(squares / sum - mean * mean, 0));
    }
}
