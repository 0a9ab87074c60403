package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Where an entry's mean saving is 0: flats that come s times as often, or another start cost.
 *
 * <p>s is the root nearest 1 within 0 to 10, found to 0.1 % on the first {@value Sensitivity#FUTURES} futures by rings
 * around 1 and Brent's method, then moved by one secant step on all futures. Two roots within one
 * ring of the search are not told apart.
 */
final class BreakEvens {
    private static final double[] RINGS = {0, 0.25, 0.6, 1, 2, 4, 9};
    private static final double ACCURACY = 2.5e-4;
    private static final double SMALLEST = 1e-6;
    private static final double NEARBY = 0.05;
    private static final double MOST_STEP = 0.5;
    private static final double MOST = 10;
    private static final int EVALUATIONS = 60;

    private final MachineFutures futures;
    private final ResolvedMachine machine;
    private final long seed;
    private final int some;
    private final double meanFlats;

    BreakEvens(MachineFutures futures, long seed) {
        this.futures = futures;
        this.seed = seed;
        machine = futures.machine();
        some = Math.min(Sensitivity.FUTURES, futures.futures());
        meanFlats = machine.flatsPerSeason().mean();
    }

    /** The entries with their break-evens. */
    List<EntryAnswer> of(List<EntryAnswer> entries) {
        Map<ResolvedMachine.Entry, Double> roots = meanFlats > 0 ? roots() : Map.of();
        List<EntryAnswer> found = new ArrayList<>(List.of(entries.get(0)));
        for (EntryAnswer entry : entries.subList(1, entries.size())) {
            Double root = roots.get(entry.entry());
            found.add(entry.withBreakEvens(
                    root == null ? null : flats(entry, root),
                    price(entry, entry.saving().mean()),
                    next(entry)));
        }
        return found;
    }

    private @Nullable Double next(EntryAnswer entry) {
        EntryAnswer.OverNext over = entry.overNext();
        return over == null ? null : price(entry, over.mean());
    }

    /** The start cost at which a mean saving is used up. */
    private @Nullable Double price(EntryAnswer entry, double saving) {
        double worthOfOne = futures.presentValueOfOne();
        return entry.startCost() == 0 || !(worthOfOne > 0) ? null : entry.startCost() + saving / worthOfOne;
    }

    private EntryAnswer.@Nullable BreakEvenFlats flats(EntryAnswer entry, double root) {
        double scale = secantStep(entry, root);
        return scale >= 0 && scale <= MOST ? new EntryAnswer.BreakEvenFlats(scale * meanFlats, meanFlats) : null;
    }

    /** For each entry that has one, the root nearest 1 on the first futures. Entries share what is simulated. */
    private Map<ResolvedMachine.Entry, Double> roots() {
        Map<ResolvedMachine.Entry, Double> roots = new HashMap<>();
        List<ResolvedMachine.Entry> open =
                new ArrayList<>(machine.entries().subList(1, machine.entries().size()));
        Map<ResolvedMachine.Entry, Double> up = savings(open, 1);
        Map<ResolvedMachine.Entry, Double> down = up;
        for (int r = 1; r < RINGS.length && !open.isEmpty(); r++) {
            Ring ring = new Ring(RINGS[r - 1], RINGS[r]);
            Map<ResolvedMachine.Entry, Double> nextUp = savings(open, 1 + ring.outer());
            Map<ResolvedMachine.Entry, Double> nextDown =
                    ring.outer() <= 1 ? savings(open, 1 - ring.outer()) : Map.of();
            for (ResolvedMachine.Entry entry : List.copyOf(open)) {
                OptionalDouble above = ring.above(this, entry, value(up, entry), value(nextUp, entry));
                OptionalDouble below = ring.outer() <= 1
                        ? ring.below(this, entry, value(nextDown, entry), value(down, entry))
                        : OptionalDouble.empty();
                nearer(above, below).ifPresent(root -> {
                    roots.put(entry, root);
                    open.remove(entry);
                });
            }
            up = nextUp;
            down = nextDown;
        }
        return roots;
    }

    private static double value(Map<ResolvedMachine.Entry, Double> savings, ResolvedMachine.Entry entry) {
        return savings.getOrDefault(entry, 0.0);
    }

    private static OptionalDouble nearer(OptionalDouble above, OptionalDouble below) {
        if (above.isPresent() && below.isPresent()) {
            return 1 - below.getAsDouble() < above.getAsDouble() - 1 ? below : above;
        }
        return above.isPresent() ? above : below;
    }

    /** The values of s that are further from 1 than {@code inner} and no further than {@code outer}. */
    private record Ring(double inner, double outer) {
        OptionalDouble above(BreakEvens of, ResolvedMachine.Entry entry, double near, double far) {
            return of.root(entry, new double[] {1 + inner, 1 + outer}, new double[] {near, far});
        }

        OptionalDouble below(BreakEvens of, ResolvedMachine.Entry entry, double far, double near) {
            return of.root(entry, new double[] {1 - outer, 1 - inner}, new double[] {far, near});
        }
    }

    private OptionalDouble root(ResolvedMachine.Entry entry, double[] s, double[] saving) {
        if (!(saving[0] * saving[1] < 0)) {
            boolean oneIsZero = (saving[0] == 0) != (saving[1] == 0);
            return oneIsZero ? OptionalDouble.of(saving[0] == 0 ? s[0] : s[1]) : OptionalDouble.empty();
        }
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(ACCURACY, SMALLEST, 1e-9, 5);
        return OptionalDouble.of(solver.solve(EVALUATIONS, x -> saving(entry, x, some), s[0], s[1]));
    }

    /** One step from the root of the first futures to that of all, by the slope beside it on all. */
    private double secantStep(EntryAnswer entry, double s) {
        double beside = s + NEARBY * Math.max(s, NEARBY);
        double here = saving(entry.entry(), s, futures.futures());
        double slope = (saving(entry.entry(), beside, futures.futures()) - here) / (beside - s);
        double step = here / slope;
        return Math.abs(step) <= MOST_STEP * Math.max(s, NEARBY) ? s - step : s;
    }

    private double saving(ResolvedMachine.Entry entry, double scale, int n) {
        return value(savings(List.of(entry), scale, n), entry);
    }

    private Map<ResolvedMachine.Entry, Double> savings(List<ResolvedMachine.Entry> entries, double scale) {
        return savings(entries, scale, some);
    }

    private Map<ResolvedMachine.Entry, Double> savings(List<ResolvedMachine.Entry> entries, double scale, int n) {
        List<ResolvedMachine.Entry> about = new ArrayList<>(List.of(machine.carried()));
        about.addAll(entries);
        MachineFutures run = MachineFutures.ofDifferences(
                        machine.about(about).withFlatsTimes(scale), seed, futures.shared())
                .runAll(n);
        double carried = new Sample(run.costs(0)).mean();
        Map<ResolvedMachine.Entry, Double> savings = new HashMap<>();
        for (int e = 1; e < about.size(); e++) {
            savings.put(about.get(e), carried - new Sample(run.costs(e)).mean());
        }
        return savings;
    }
}
