package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.MachineFutures;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Where an entry's mean saving is 0: flats that come s times as often, or another start cost.
 *
 * <p>s is the root nearest 1 within 0 to 10, found to 0.1 % on the first {@value Sensitivity#FUTURES} futures by rings
 * around 1 and Brent's method, then moved by one secant step through 1 and itself on all futures. Two roots within one
 * ring of the search are not told apart.
 */
final class BreakEvens {
    private static final double[] RINGS = {0, 0.1, 0.2, 0.35, 0.55, 0.8, 1, 1.5, 2.2, 3.2, 4.6, 6.5, 9};
    private static final double ACCURACY = 2.5e-4;
    private static final double MOST = 10;
    private static final int EVALUATIONS = 60;

    private final MachineFutures futures;
    private final long seed;
    private final int some;

    BreakEvens(MachineFutures futures, long seed) {
        this.futures = futures;
        this.seed = seed;
        some = Math.min(Sensitivity.FUTURES, futures.futures());
    }

    EntryAnswer of(EntryAnswer entry, int e) {
        if (e == 0) {
            return entry;
        }
        Double price = entry.startCost() == 0
                ? null
                : entry.startCost() + entry.saving().mean() / futures.presentValueOfOne();
        return entry.withBreakEvens(flats(entry), price);
    }

    private EntryAnswer.@Nullable BreakEvenFlats flats(EntryAnswer entry) {
        double mean = futures.machine().flatsPerSeason().mean();
        if (!(mean > 0)) {
            return null;
        }
        OptionalDouble found = nearestRoot(entry.entry());
        if (found.isEmpty()) {
            return null;
        }
        double scale = secantStep(entry, found.getAsDouble());
        return scale >= 0 && scale <= MOST ? new EntryAnswer.BreakEvenFlats(scale * mean, mean) : null;
    }

    private OptionalDouble nearestRoot(ResolvedMachine.Entry entry) {
        double up = saving(entry, 1, some);
        double down = up;
        for (int r = 1; r < RINGS.length; r++) {
            double outer = RINGS[r];
            double inner = RINGS[r - 1];
            double nextUp = saving(entry, 1 + outer, some);
            OptionalDouble above = root(entry, 1 + inner, 1 + outer, up, nextUp);
            OptionalDouble below = OptionalDouble.empty();
            if (outer <= 1) {
                double nextDown = saving(entry, 1 - outer, some);
                below = root(entry, 1 - outer, 1 - inner, nextDown, down);
                down = nextDown;
            }
            up = nextUp;
            if (above.isPresent() && below.isPresent()) {
                return 1 - below.getAsDouble() < above.getAsDouble() - 1 ? below : above;
            }
            if (above.isPresent() || below.isPresent()) {
                return above.isPresent() ? above : below;
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble root(ResolvedMachine.Entry entry, double from, double to, double atFrom, double atTo) {
        if (!(atFrom * atTo < 0)) {
            boolean zeroWithin = (atFrom == 0) != (atTo == 0);
            return zeroWithin ? OptionalDouble.of(atFrom == 0 ? from : to) : OptionalDouble.empty();
        }
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, 1e-9, 5);
        return OptionalDouble.of(solver.solve(EVALUATIONS, s -> saving(entry, s, some), from, to));
    }

    private double secantStep(EntryAnswer entry, double s) {
        double atOne = entry.saving().mean();
        double atRoot = saving(entry.entry(), s, futures.futures());
        double slope = (atRoot - atOne) / (s - 1);
        double step = atRoot / slope;
        return Math.abs(step) < Math.max(s, 1) ? s - step : s;
    }

    private double saving(ResolvedMachine.Entry entry, double scale, int n) {
        ResolvedMachine scaled = futures.machine()
                .about(List.of(futures.machine().carried(), entry))
                .withFlatsTimes(scale);
        return saving(scaled, seed, n);
    }

    /** The mean saving of a machine's second entry against its first. */
    static double saving(ResolvedMachine machine, long seed, int n) {
        MachineFutures run = new MachineFutures(machine, seed).runAll(n);
        return new Sample(run.costs(0)).mean() - new Sample(run.costs(1)).mean();
    }
}
