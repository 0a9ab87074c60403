package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The entries of a machine against each other, future by future: which is cheapest, how clearly, and each step up in
 * start cost.
 */
final class Comparison {
    private static final double SAME_MONEY = 0.01;
    private static final double NOTICEABLE = 0.01;
    private static final double STANDARD_ERRORS = 2;

    private final MachineFutures futures;
    private final double threshold;
    private final double[] start;
    private final double[] mean;
    private final double[][] costs;

    Comparison(MachineFutures futures, double threshold) {
        this.futures = futures;
        this.threshold = threshold;
        int n = futures.machine().entries().size();
        start = new double[n];
        mean = new double[n];
        costs = new double[n][];
        for (int e = 0; e < n; e++) {
            start[e] = futures.startCost(e);
            costs[e] = futures.costs(e);
            mean[e] = new Sample(costs[e]).mean();
        }
    }

    /** What a step from one entry to another saves on the mean, how surely, and in what share of the futures. */
    record Step(int from, double mean, double standardError, double chance) {}

    Step step(int from, int to) {
        double[] saved = saved(from, to);
        Sample sample = new Sample(saved);
        return new Step(from, sample.mean(), sample.standardError(), Sample.shareAboveZero(saved));
    }

    /** What {@code to} costs less than {@code from} in each future. */
    double[] saved(int from, int to) {
        double[] saved = new double[costs[from].length];
        for (int f = 0; f < saved.length; f++) {
            saved[f] = costs[from][f] - costs[to][f];
        }
        return saved;
    }

    double[] costs(int e) {
        return costs[e];
    }

    /** Lowest mean cost; ties within a cent go to the carried package, then to the smaller start cost. */
    int recommended() {
        double least = Double.POSITIVE_INFINITY;
        for (double m : mean) {
            least = Math.min(least, m);
        }
        int best = -1;
        for (int e = 0; e < mean.length; e++) {
            boolean tied = mean[e] <= least + SAME_MONEY;
            if (tied && (best < 0 || (best != 0 && start[e] < start[best]))) {
                best = e;
            }
        }
        return best;
    }

    /** The best entry with a smaller start cost, the carried one included; null for the carried one. */
    @Nullable
    Step overNext(int e) {
        if (e == 0) {
            return null;
        }
        int best = 0;
        for (int other = 1; other < mean.length; other++) {
            if (start[other] < start[e] && mean[other] < mean[best]) {
                best = other;
            }
        }
        return step(best, e);
    }

    /** How small a mean saving can be and still count: two standard errors, or 1 % of what the carried one costs. */
    private double noticeable(Step step) {
        return Math.max(STANDARD_ERRORS * step.standardError(), NOTICEABLE * Math.abs(mean[0]));
    }

    private boolean clear(Step step) {
        return step.mean() > noticeable(step) && step.chance() >= threshold;
    }

    Verdict verdict() {
        int choice = recommended();
        if (choice != 0) {
            Step next = overNext(choice);
            return clear(step(0, choice)) && next != null && clear(next) ? Verdict.PAYS : Verdict.CLOSE;
        }
        for (int e = 1; e < mean.length; e++) {
            Step step = step(0, e);
            if (!(step.mean() <= -noticeable(step))) {
                return Verdict.CLOSE;
            }
        }
        return Verdict.KEEP;
    }

    /**
     * From the carried package up, each entry that is cheaper over life than every one with a smaller start cost. Of
     * entries with the same start cost only the cheapest can be a step.
     */
    List<MachineAnswer.Rung> ladder() {
        List<Integer> order = IntStream.range(1, mean.length)
                .filter(e -> start[e] >= start[0])
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(e -> start[e]).thenComparingDouble(e -> mean[e]))
                .toList();
        double cheapest = mean[0];
        for (int e = 1; e < mean.length; e++) {
            cheapest = start[e] < start[0] ? Math.min(cheapest, mean[e]) : cheapest;
        }
        List<MachineAnswer.Rung> ladder = new ArrayList<>();
        int below = 0;
        for (int e : order) {
            if (mean[e] < cheapest) {
                Step step = step(below, e);
                ladder.add(new MachineAnswer.Rung(
                        futures.machine().entries().get(e), start[e] - start[below], step.mean(), step.chance()));
                cheapest = mean[e];
                below = e;
            }
        }
        return ladder;
    }
}
