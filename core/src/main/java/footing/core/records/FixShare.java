package footing.core.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * The share of flats met by one fix: Dirichlet, one count spread over the stated shares and one for each time it was
 * done.
 *
 * <p>The mean is (stated + count)/(1 + all counts); limits are those of the beta distribution one share has.
 *
 * @param stated the share before the records, 0 for a fix only they name
 * @param all flats counted, however mended
 */
public record FixShare(String name, double stated, int count, int all, double mean, Limits limits) {
    private static final double TAIL = 0.1;

    /**
     * The share up to which a fix may well be used though it never was: 1 − 0.1^(1/n) for n flats, at which none in n
     * happens one time in ten; all of them where there are no flats.
     *
     * <p>Source: the exact binomial limit of C. J. Clopper, E. S. Pearson, Biometrika 26, 1934 (from memory).
     */
    public double mostUnseen() {
        return all == 0 ? 1 : 1 - Math.pow(TAIL, 1.0 / all);
    }

    /**
     * The shares of all fixes that are stated or were done.
     *
     * @param stated shares by name, adding up to 1; empty spreads the one count evenly
     * @param counts how often each was done
     */
    public static List<FixShare> of(Map<String, Double> stated, Map<String, Integer> counts) {
        Map<String, Double> weights = new LinkedHashMap<>(stated);
        counts.keySet().forEach(name -> weights.putIfAbsent(name, stated.isEmpty() ? 1.0 / counts.size() : 0.0));
        double sum = weights.values().stream().mapToDouble(w -> w).sum();
        if (!weights.isEmpty() && !(Math.abs(sum - 1) < 1e-6)) {
            throw new IllegalArgumentException("the shares add up to " + sum + ", not to 1");
        }
        int all = counts.values().stream().mapToInt(c -> c).sum();
        List<FixShare> shares = new ArrayList<>();
        weights.forEach((name, weight) -> {
            int count = counts.getOrDefault(name, 0);
            double own = weight + count;
            shares.add(new FixShare(name, weight, count, all, own / (1 + all), limits(own, 1 + all - own)));
        });
        return List.copyOf(shares);
    }

    private static Limits limits(double own, double others) {
        if (own <= 0) {
            return new Limits(0, 0);
        }
        if (others <= 1e-12) {
            return new Limits(1, 1);
        }
        BetaDistribution beta = new BetaDistribution(own, others);
        double tail = (1 - Limits.SHARE) / 2;
        return new Limits(beta.inverseCumulativeProbability(tail), beta.inverseCumulativeProbability(1 - tail));
    }
}
