package footing.core.answer;

import footing.core.chance.Draws;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.DrawKeys;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What it is worth to know something before deciding: the expected value of partial perfect information.
 *
 * <p>EVPPI = mean over futures of max_d f_d(θ) − max_d mean NB_d, where NB_d is minus the cost of entry d and f_d its
 * regression on the normal score of θ: a natural cubic spline with five inner knots at even ranks; for everything at
 * once the splines of all unknowns and the products of their scores by pairs. Only differences to the recommended entry
 * are fitted. A difference that θ does not show to depend on it (F test at {@value #SIGNIFICANT}), or nowhere to turn
 * by three standard errors, counts as its mean: an input that can't change the choice is worth 0, not noise.
 *
 * <p>Source: M. Strong, J. E. Oakley, A. Brennan, "Estimating Multiparameter Partial Expected Value of Perfect
 * Information from a Probabilistic Sensitivity Analysis Sample", Medical Decision Making 34, 2014.
 */
final class InformationValue {
    private static final int INNER_KNOTS = 5;
    /** More rows would only cost memory: the noise is far below what anybody would pay to know. */
    private static final int MOST_FUTURES = 32_768;

    private static final double SIGNIFICANT = 0.001;
    private static final double SHOWN = 3;
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final ResolvedMachine machine;
    private final Key flats;
    private final Comparison comparison;
    private final int choice;
    private final int futures;
    private final long seed;

    /**
     * @param flats the key the case states the flats under
     */
    InformationValue(ResolvedMachine machine, Key flats, Comparison comparison, long seed) {
        this.machine = machine;
        this.flats = flats;
        this.comparison = comparison;
        futures = Math.min(MOST_FUTURES, comparison.costs(0).length);
        this.seed = seed;
        choice = comparison.recommended();
    }

    /** What is unknown of the machine, and the state its draws come from. */
    private record Unknown(Input input, long key) {}

    MachineAnswer.FindOutFirst findOutFirst() {
        List<Unknown> unknowns = unknowns();
        List<double[]> scores =
                unknowns.stream().map(u -> scores(draws(u.key()))).toList();
        List<MachineAnswer.Worth> each = new ArrayList<>();
        double most = 0;
        for (int u = 0; u < unknowns.size(); u++) {
            double value = worth(List.of(scores.get(u)));
            each.add(new MachineAnswer.Worth(unknowns.get(u).input(), value));
            most = Math.max(most, value);
        }
        each.sort((a, b) -> Double.compare(b.value(), a.value()));
        double all = unknowns.size() > 1 ? Math.max(most, worth(scores)) : most;
        return new MachineAnswer.FindOutFirst(all, each);
    }

    private List<Unknown> unknowns() {
        List<Unknown> found = new ArrayList<>();
        String crew = machine.crew().id();
        if (!machine.flatsPerSeason().isFixed()) {
            found.add(new Unknown(Input.of(flats, machine.id()), DrawKeys.flatsPerSeason(seed, crew)));
        }
        if (!machine.crew().makeUpLater().isFixed()) {
            found.add(new Unknown(Input.of(Key.MAKE_UP_LATER, crew), DrawKeys.makeUpLater(seed, crew)));
        }
        for (ResolvedAssembly a : new TreeMap<>(machine.assemblies()).values()) {
            if (a.lifeUnsure() > 0) {
                found.add(new Unknown(Input.of(Key.LIFE_UNSURE, a.id()), DrawKeys.lifeUnsure(seed, a.id())));
            }
            if (!a.flatFactor().isFixed()) {
                found.add(new Unknown(Input.of(Key.FLAT_FACTOR, a.id()), DrawKeys.flatFactor(seed, a.id())));
            }
            if (!a.ruinFactor().isFixed()) {
                found.add(new Unknown(Input.of(Key.RUIN_FACTOR, a.id()), DrawKeys.ruinFactor(seed, a.id())));
            }
        }
        return found;
    }

    private double[] draws(long key) {
        double[] draws = new double[futures];
        for (int f = 0; f < futures; f++) {
            draws[f] = Draws.uniform(Draws.future(key, f), 0);
        }
        return draws;
    }

    /** Normal scores Φ⁻¹((rank − ½)/n). */
    static double[] scores(double[] values) {
        int n = values.length;
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] scores = new double[n];
        for (int i = 0; i < n; i++) {
            int rank = Arrays.binarySearch(sorted, values[i]);
            scores[i] = NORMAL.inverseCumulativeProbability((rank + 0.5) / n);
        }
        return scores;
    }

    private double worth(List<double[]> scores) {
        List<double[]> gains = IntStream.range(0, machine.entries().size())
                .filter(e -> e != choice)
                .mapToObj(e -> Arrays.copyOf(comparison.saved(choice, e), futures))
                .toList();
        return worth(scores, gains);
    }

    /**
     * The mean over cases of what the best choice would gain if the scores were known, against choosing blind; 0 where
     * there are too few cases for a regression.
     *
     * @param scores of what would be known
     * @param gains of each other choice over the best blind one, by case
     */
    static double worth(List<double[]> scores, List<double[]> gains) {
        int cases = scores.get(0).length;
        if (gains.isEmpty() || cases <= columns(scores.size()) + 1) {
            return 0;
        }
        LeastSquares regression = new LeastSquares(design(scores));
        double[] best = new double[cases];
        for (double[] gain : gains) {
            LeastSquares.Fit fit = regression.fit(gain);
            if (fit.significance < SIGNIFICANT && turns(fit)) {
                for (int i = 0; i < best.length; i++) {
                    best[i] = Math.max(best[i], fit.values[i]);
                }
            }
        }
        return Arrays.stream(best).sum() / best.length;
    }

    private static boolean turns(LeastSquares.Fit fit) {
        for (int i = 0; i < fit.values.length; i++) {
            if (fit.values[i] > 0 && fit.values[i] > SHOWN * fit.error(i)) {
                return true;
            }
        }
        return false;
    }

    /** Splines of so many unknowns and the products of their scores by pairs. */
    private static int columns(int unknowns) {
        return unknowns * (INNER_KNOTS + 1) + unknowns * (unknowns - 1) / 2;
    }

    private static double[][] design(List<double[]> scores) {
        int n = scores.get(0).length;
        int k = scores.size();
        NaturalSpline spline = new NaturalSpline(knots(scores.get(0)));
        int size = spline.size();
        double[][] rows = new double[n][columns(k)];
        for (int i = 0; i < n; i++) {
            int at = 0;
            for (double[] score : scores) {
                spline.fill(score[i], rows[i], at);
                at += size;
            }
            for (int a = 0; a < k; a++) {
                for (int b = a + 1; b < k; b++) {
                    rows[i][at++] = scores.get(a)[i] * scores.get(b)[i];
                }
            }
        }
        return rows;
    }

    private static double[] knots(double[] scores) {
        double[] sorted = scores.clone();
        Arrays.sort(sorted);
        double[] knots = new double[INNER_KNOTS + 2];
        for (int k = 0; k < knots.length; k++) {
            knots[k] = sorted[(int) Math.round((double) k * (sorted.length - 1) / (INNER_KNOTS + 1))];
        }
        return knots;
    }
}
