package footing.core.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How an operator was shaken, by axis: the weighted root mean square a = √(∫ a²dt / T) in m/s². It is for comparing two
 * machines on one course at one speed; it is no measurement of anybody's exposure.
 *
 * <p>Source: ISO 2631-1:1997, 6.1; the crest factor is that of 6.2.1, above 9 the mean says too little (from memory).
 *
 * @param x fore and aft, weighted by Wd
 * @param y sideways, weighted by Wd
 * @param z up and down, weighted by Wk
 */
public record Ride(Axis x, Axis y, Axis z, double seconds, double rate, List<Finding> findings) {
    /** Slower logs miss too much of what is felt. */
    public static final double LEAST_RATE = 50;

    private static final double SHORTEST_PART = 2;
    private static final double LOWEST = 0.5;
    private static final double HIGHEST = 80;
    private static final double RATE_TOLERANCE = 0.98;

    public Ride {
        findings = List.copyOf(findings);
    }

    /**
     * One axis.
     *
     * @param rms weighted, in m/s²
     * @param peak largest weighted value, in m/s²
     */
    public record Axis(double rms, double peak) {
        public double crest() {
            return rms > 0 ? peak / rms : 0;
        }
    }

    /** All axes together, each counted once: √(x² + y² + z²). */
    public double total() {
        return Math.sqrt(x.rms() * x.rms() + y.rms() * y.rms() + z.rms() * z.rms());
    }

    /** What came of a log: a ride, or what keeps it from being one. */
    public sealed interface Reading {}

    public record Measured(Ride ride) implements Reading {}

    /** The values look like another unit than the one stated. */
    public record WrongUnit(Finding.LooksLike found) implements Reading {}

    public record TooSlow(double rate) implements Reading {}

    public record TooShort(double seconds) implements Reading {}

    /**
     * Reads a log of three axes.
     *
     * @param upAxis the channel that points up or down, 0 to 2; empty finds it by gravity, or takes the last
     */
    public static Reading of(Log log, AccelerationUnit unit, OptionalInt upAxis) {
        if (log.channels().length != 3) {
            throw new IllegalArgumentException("three axes are due, not " + log.channels().length);
        }
        double rate = 1 / log.usualStep();
        if (!(rate >= RATE_TOLERANCE * LEAST_RATE)) {
            return new TooSlow(rate);
        }
        var seen = Quality.unitSeen(log);
        if (seen.isPresent() && seen.get() != unit) {
            return new WrongUnit(new Finding.LooksLike(seen.get(), Quality.gravity(log)));
        }
        List<Finding> findings = new ArrayList<>();
        if (seen.isEmpty()) {
            findings.add(new Finding.UnitUnchecked());
        }
        List<Log> parts = parts(log, findings);
        if (parts.isEmpty()) {
            return new TooShort(log.seconds());
        }
        look(log, parts, rate, findings);
        int up = upAxis.orElseGet(() -> seen.isPresent() ? steepest(log) : 2);
        return new Measured(measured(parts, unit, up, rate, findings));
    }

    private static List<Log> parts(Log log, List<Finding> findings) {
        List<Integer> starts = Quality.starts(log);
        List<Log> parts = new ArrayList<>();
        double lost = 0;
        double gaps = 0;
        for (int i = 0; i < starts.size(); i++) {
            int from = starts.get(i);
            int to = i + 1 < starts.size() ? starts.get(i + 1) : log.size();
            gaps += from > 0 ? log.times()[from] - log.times()[from - 1] : 0;
            double seconds = log.times()[to - 1] - log.times()[from];
            if (seconds >= SHORTEST_PART) {
                parts.add(log.part(from, to));
            } else {
                lost += seconds;
            }
        }
        if (starts.size() > 1) {
            findings.add(new Finding.Gaps(starts.size() - 1, gaps));
        }
        if (lost > 0 && !parts.isEmpty()) {
            findings.add(new Finding.TooShortParts(lost));
        }
        return parts;
    }

    private static void look(Log log, List<Log> parts, double rate, List<Finding> findings) {
        double unsteady = parts.stream().mapToDouble(Steady::unsteadiness).max().orElse(0);
        if (unsteady > Steady.STEADY) {
            findings.add(new Finding.Resampled(rate, largestStep(parts) * rate));
        }
        if (rate / 2 < HIGHEST) {
            double missing = Math.log(HIGHEST / (rate / 2)) / Math.log(HIGHEST / LOWEST);
            findings.add(new Finding.LowRate(rate, rate / 2, missing));
        }
        for (int c = 0; c < log.channels().length; c++) {
            int clipped = Quality.clipped(log.channels()[c]);
            if (clipped > 0) {
                findings.add(new Finding.Clipped(c, clipped));
            }
        }
    }

    private static double largestStep(List<Log> parts) {
        double largest = 0;
        for (Log part : parts) {
            for (int i = 1; i < part.size(); i++) {
                largest = Math.max(largest, part.times()[i] - part.times()[i - 1]);
            }
        }
        return largest;
    }

    private static int steepest(Log log) {
        int steepest = 0;
        double most = -1;
        for (int c = 0; c < log.channels().length; c++) {
            double mean = Math.abs(
                    java.util.Arrays.stream(log.channels()[c]).average().orElse(0));
            if (mean > most) {
                most = mean;
                steepest = c;
            }
        }
        return steepest;
    }

    private static Ride measured(List<Log> parts, AccelerationUnit unit, int up, double rate, List<Finding> findings) {
        Axis z = axis(parts, up, Weighting.WK, unit);
        int first = up == 0 ? 1 : 0;
        int second = up == 2 ? 1 : 2;
        Axis x = axis(parts, first, Weighting.WD, unit);
        Axis y = axis(parts, second, Weighting.WD, unit);
        double seconds = parts.stream().mapToDouble(Log::seconds).sum();
        return new Ride(x, y, z, seconds, rate, findings);
    }

    private static Axis axis(List<Log> parts, int channel, Weighting weighting, AccelerationUnit unit) {
        double sum = 0;
        double peak = 0;
        long count = 0;
        for (Log part : parts) {
            for (double a : Steady.of(part, channel).weighted(weighting)) {
                sum += a * a;
                peak = Math.max(peak, Math.abs(a));
                count++;
            }
        }
        return new Axis(Math.sqrt(sum / count) * unit.factor(), peak * unit.factor());
    }
}
