package footing.core.trial;

import footing.core.chance.Draws;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The mean of differences drawn again from themselves, with replacement: what the mean might have been. Up to eight
 * differences every draw there can be is counted by its chance; from more, {@value #DRAWS} are drawn by key.
 *
 * <p>With fewer than eight pairs its interval is too narrow, so it stands beside the t-interval and decides nothing.
 * Source: B. Efron, R. Tibshirani, An Introduction to the Bootstrap, percentile interval (from memory); the chances of
 * the exact count are multinomial (derived).
 */
public final class Resampled {
    static final int MOST_EXACT = 8;
    private static final int DRAWS = 10_000;
    private static final double ROUNDING = 1e-12;

    private record Mean(double value, double chance) {}

    private final List<Mean> means = new ArrayList<>();

    private Resampled() {}

    /**
     * Of at least one difference.
     *
     * @param seed the same one draws the same
     */
    public static Resampled of(double[] differences, long seed) {
        if (differences.length == 0) {
            throw new IllegalArgumentException("nothing to draw from");
        }
        Resampled drawn = new Resampled();
        if (differences.length <= MOST_EXACT) {
            drawn.count(differences, 0, differences.length, new Mean(0, 1));
        } else {
            drawn.draw(differences, seed);
        }
        drawn.means.sort(Comparator.comparingDouble(Mean::value));
        return drawn;
    }

    /** Takes the difference at {@code i} as often as it goes, then the later ones; k times has a share of 1/k! each. */
    private void count(double[] differences, int i, int left, Mean sum) {
        int n = differences.length;
        if (i == n - 1) {
            double chance = sum.chance() / factorial(left) * factorial(n) / Math.pow(n, n);
            means.add(new Mean((sum.value() + left * differences[i]) / n, chance));
            return;
        }
        for (int k = 0; k <= left; k++) {
            Mean next = new Mean(sum.value() + k * differences[i], sum.chance() / factorial(k));
            count(differences, i + 1, left - k, next);
        }
    }

    private static double factorial(int n) {
        double product = 1;
        for (int i = 2; i <= n; i++) {
            product *= i;
        }
        return product;
    }

    private void draw(double[] differences, long seed) {
        int n = differences.length;
        for (int draw = 0; draw < DRAWS; draw++) {
            long state = Draws.future(Draws.key(seed, "trial.resampled"), draw);
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += differences[(int) (n * Draws.uniform(state, j))];
            }
            means.add(new Mean(sum / n, 1.0 / DRAWS));
        }
    }

    /** The chance of a mean from low to high, both included. */
    public double chance(double low, double high) {
        double margin = ROUNDING * Math.max(1, Math.max(Math.abs(low), Math.abs(high)));
        return means.stream()
                .filter(m -> m.value() >= low - margin && m.value() <= high + margin)
                .mapToDouble(Mean::chance)
                .sum();
    }

    /** The standard deviation of the mean. */
    public double error() {
        double mean = means.stream().mapToDouble(m -> m.value() * m.chance()).sum();
        return Math.sqrt(means.stream()
                .mapToDouble(m -> m.chance() * (m.value() - mean) * (m.value() - mean))
                .sum());
    }

    /** Between the percentiles that leave out half of the rest on each side. */
    public Interval interval(double confidence) {
        double tail = (1 - confidence) / 2;
        return new Interval(percentile(tail), percentile(1 - tail));
    }

    private double percentile(double share) {
        double sum = 0;
        for (Mean m : means) {
            sum += m.chance();
            if (sum >= share - ROUNDING) {
                return m.value();
            }
        }
        return means.get(means.size() - 1).value();
    }
}
