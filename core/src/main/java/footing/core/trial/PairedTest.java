package footing.core.trial;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * Student's test of paired differences against zero: t = mean / (spread/√n) with n − 1 degrees of freedom. Holds where
 * the differences are roughly normal; runs made in the order of a plan need no more than that of each other.
 *
 * <p>Source: Student, "The probable error of a mean", Biometrika 6 (1908); check values of its sleep data.
 *
 * @param pairs number of differences, at least 2
 * @param mean their mean
 * @param spread their standard deviation, with the divisor n − 1
 */
public record PairedTest(int pairs, double mean, double spread) {
    public PairedTest {
        if (!(pairs >= 2 && spread >= 0 && Math.abs(mean) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no test of " + pairs + " pairs with spread " + spread);
        }
    }

    public static PairedTest of(double[] differences) {
        return new PairedTest(
                differences.length, StatUtils.mean(differences), Math.sqrt(StatUtils.variance(differences)));
    }

    /** Standard error of the mean. */
    public double error() {
        return spread / Math.sqrt(pairs);
    }

    /** Infinite, or 0 for a mean of 0, where all differences are the same. */
    public double t() {
        return mean == 0 ? 0 : mean / error();
    }

    /** Chance of a t this far from zero, on either side, if there were no difference. */
    public double p() {
        return Math.min(1, 2 * Math.min(chanceAbove(), chanceBelow()));
    }

    /** Chance of a t as large as this or larger, if there were no difference. */
    public double chanceAbove() {
        return distribution().cumulativeProbability(-t());
    }

    /** Chance of a t as small as this or smaller. */
    public double chanceBelow() {
        return distribution().cumulativeProbability(t());
    }

    /** The interval of a confidence such as 0.95 for the true difference. */
    public Interval interval(double confidence) {
        double reach = distribution().inverseCumulativeProbability((1 + confidence) / 2) * error();
        return new Interval(mean - reach, mean + reach);
    }

    private TDistribution distribution() {
        return new TDistribution(pairs - 1.0);
    }
}
