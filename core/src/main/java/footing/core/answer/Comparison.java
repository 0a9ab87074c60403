package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private final List<ResolvedMachine.Entry> entries;
    private final double threshold;
    private final double[] start;
    private final double[] mean;
    private final double[][] costs;
    private final Map<Integer, Step> steps = new HashMap<>();

    Comparison(MachineFutures futures, double threshold) {
        this(futures.machine().entries(), threshold, starts(futures), costs(futures));
    }

    private Comparison(List<ResolvedMachine.Entry> entries, double threshold, double[] start, double[][] costs) {
        this.entries = entries;
        this.threshold = threshold;
        this.start = start;
        this.costs = costs;
        mean = new double[costs.length];
        for (int e = 0; e < mean.length; e++) {
            mean[e] = new Sample(costs[e]).mean();
        }
    }

    /** The same with the entries of {@code some}, which are among these, as they came out there. */
    Comparison with(MachineFutures some) {
        double[] newStart = start.clone();
        double[][] newCosts = costs.clone();
        for (int e = 0; e < costs.length; e++) {
            int s = some.machine().entries().indexOf(entries.get(e));
            if (s >= 0) {
                newStart[e] = some.startCost(s);
                newCosts[e] = some.costs(s);
            }
        }
        return new Comparison(entries, threshold, newStart, newCosts);
    }

    private static double[] starts(MachineFutures futures) {
        return IntStream.range(0, futures.machine().entries().size())
                .mapToDouble(futures::startCost)
                .toArray();
    }

    private static double[][] costs(MachineFutures futures) {
        return IntStream.range(0, futures.machine().entries().size())
                .mapToObj(futures::costs)
                .toArray(double[][]::new);
    }

    int entries() {
        return costs.length;
    }

    double threshold() {
        return threshold;
    }

    double start(int e) {
        return start[e];
    }

    double mean(int e) {
        return mean[e];
    }

    /** What a step from one entry to another saves on the mean, how surely, and in what share of the futures. */
    record Step(int from, double mean, double standardError, double chance) {}

    /** Remembers each step: several questions are asked of it. */
    Step step(int from, int to) {
        return steps.computeIfAbsent(from * costs.length + to, k -> measured(from, to));
    }

    private Step measured(int from, int to) {
        double[] saved = saved(from, to);
        Sample sample = new Sample(saved);
        return new Step(from, sample.mean(), sample.standardError(), Sample.shareAboveZero(saved));
    }

    /** The saving of an entry against the carried one; what its step would tell is remembered with it. */
    Saving saving(int e) {
        if (e == 0) {
            return Saving.NONE;
        }
        Saving saving = Saving.of(saved(0, e));
        steps.putIfAbsent(e, new Step(0, saving.mean(), saving.standardError(), saving.chance()));
        return saving;
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
                ladder.add(new MachineAnswer.Rung(entries.get(e), start[e] - start[below], step.mean(), step.chance()));
                cheapest = mean[e];
                below = e;
            }
        }
        return ladder;
    }
}
