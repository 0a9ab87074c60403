package footing.core.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Looks over a log for what would spoil it. */
final class Quality {
    /** A step this many times the usual one is a gap. */
    static final double GAP = 5;

    private static final int CLIPPED_RUN = 3;
    private static final int CLIPPED_TIMES = 2;
    private static final double STEPS_INTO_A_CLIP = 4;
    private static final double GRAVITY_SEEN = 0.2;

    private Quality() {}

    /** Where a log starts anew after a gap; the first is 0. */
    static List<Integer> starts(Log log) {
        double usual = log.usualStep();
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (int i = 1; i < log.size(); i++) {
            if (log.times()[i] - log.times()[i - 1] > GAP * usual) {
                starts.add(i);
            }
        }
        return starts;
    }

    /**
     * Samples that lie at the end of the range. Of a smooth top several samples may round to the same number, but it is
     * reached by small steps; a clipped one is reached by a large step and held.
     */
    static int clipped(double[] x) {
        double quantum = quantum(x);
        double top = Arrays.stream(x).max().orElse(0);
        double bottom = Arrays.stream(x).min().orElse(0);
        return top - bottom > 0 ? clippedAt(x, top, quantum) + clippedAt(x, bottom, quantum) : 0;
    }

    private static int clippedAt(double[] x, double end, double quantum) {
        int samples = 0;
        int times = 0;
        for (int i = 0; i < x.length; i++) {
            if (x[i] != end) {
                continue;
            }
            int from = i;
            while (i + 1 < x.length && x[i + 1] == end) {
                i++;
            }
            int length = i + 1 - from;
            double into = from > 0 ? Math.abs(x[from - 1] - end) : 0;
            double outOf = i + 1 < x.length ? Math.abs(x[i + 1] - end) : 0;
            if (length >= CLIPPED_RUN && Math.max(into, outOf) >= STEPS_INTO_A_CLIP * quantum) {
                samples += length;
                times++;
            }
        }
        return times >= CLIPPED_TIMES ? samples : 0;
    }

    /** The finest step in which the values are written: the smallest of the differences that aren't zero. */
    private static double quantum(double[] x) {
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double step = sorted[i] - sorted[i - 1];
            if (step > 0) {
                least = Math.min(least, step);
            }
        }
        return Math.max(least, (sorted[sorted.length - 1] - sorted[0]) / 1000);
    }

    /** The unit whose gravity the mean of three axes shows; empty if gravity has been taken out. */
    static Optional<AccelerationUnit> unitSeen(Log log) {
        double mean = gravity(log);
        return Arrays.stream(AccelerationUnit.values())
                .filter(u -> Math.abs(Math.log(mean * u.factor() / AccelerationUnit.GRAVITY.factor())) < GRAVITY_SEEN)
                .findFirst();
    }

    /** Length of the mean vector, in the unit of the values. */
    static double gravity(Log log) {
        double sum = 0;
        for (double[] channel : log.channels()) {
            double mean = Arrays.stream(channel).average().orElse(0);
            sum += mean * mean;
        }
        return Math.sqrt(sum);
    }
}
