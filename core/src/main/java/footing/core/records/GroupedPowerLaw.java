package footing.core.records;

import java.util.function.DoubleUnaryOperator;

/**
 * The same power law for flats of which only the number between services is known: n_i between t_(i−1) and t_i.
 *
 * <p>β solves Σ n_i·((t_i^β ln t_i − t_(i−1)^β ln t_(i−1))/(t_i^β − t_(i−1)^β) − ln T) = 0, λ = n/T^β.
 *
 * <p>Source: MIL-HDBK-189 (1981), appendix C (from memory).
 */
public record GroupedPowerLaw(double shape, double rate) {
    /**
     * The best fit.
     *
     * @param ends increasing ages that end the intervals, the first of which starts at 0
     * @throws IllegalArgumentException if the ends don't increase or the flats all fall into one end interval
     */
    public static GroupedPowerLaw of(double[] ends, int[] counts) {
        if (ends.length != counts.length || ends.length < 2) {
            throw new IllegalArgumentException(ends.length + " ends for " + counts.length + " counts, at least two");
        }
        double last = ends[ends.length - 1];
        int events = 0;
        for (int i = 0; i < ends.length; i++) {
            if (!(ends[i] > (i == 0 ? 0 : ends[i - 1]) && counts[i] >= 0)) {
                throw new IllegalArgumentException("interval " + i + " ends at " + ends[i] + " with " + counts[i]);
            }
            events += counts[i];
        }
        DoubleUnaryOperator score = ln -> score(Math.exp(ln), ends, counts);
        double shape = Math.exp(Roots.between(score, Math.log(1e-3), Math.log(60)));
        return new GroupedPowerLaw(shape, events / Math.pow(last, shape));
    }

    private static double score(double b, double[] ends, int[] counts) {
        double last = ends[ends.length - 1];
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            double to = ends[i] / last;
            double from = i == 0 ? 0 : ends[i - 1] / last;
            double below = from > 0 ? Math.pow(from, b) : 0;
            double loggedBelow = from > 0 ? below * Math.log(from) : 0;
            double above = Math.pow(to, b);
            sum += counts[i] * (above * Math.log(to) - loggedBelow) / (above - below);
        }
        return sum;
    }

    public double intensity(double age) {
        return rate * shape * Math.pow(age, shape - 1);
    }
}
