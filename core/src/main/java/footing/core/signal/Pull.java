package footing.core.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a load cell says of one pull.
 *
 * <p>The peak is the largest force once single wild samples are taken out (middle of three). The pull ends with the last
 * sample of at least half the peak. The wheel slips at the peak if the force falls by a tenth from there on; otherwise
 * where the force first comes within a twentieth of what it holds. The steady pull is the middle force from a quarter
 * second after the slip to the end. Rules: common practice, no source.
 *
 * @param peak in the unit of the log
 * @param steady null if the wheel slipped for less than a second
 * @param slipAt time of the slip, on the log's clock; null without a steady pull
 */
public record Pull(
        double peak, @Nullable Double steady, @Nullable Double slipAt, double seconds, List<Finding> findings) {
    private static final double SHORTEST_STEADY = 1;
    private static final double SETTLING = 0.25;
    private static final double HOLD = 0.5;
    private static final double FALL = 0.9;
    private static final double LEVEL = 0.95;

    public Pull {
        findings = List.copyOf(findings);
    }

    /** Reads a log of one channel; pulling counts positive, and a cell wired the other way is turned round. */
    public static Pull of(Log log) {
        double[] force = withoutSpikes(upright(log.channels()[0]));
        List<Finding> findings = findings(log);
        int top = indexOfMost(force);
        double peak = force[top];
        int end = last(force, HOLD * peak);
        double[] t = log.times();
        int level = first(force, LEVEL * middle(force, first(force, HOLD * peak), end));
        int slip = falls(force, top, end) ? top : Math.min(level, top);
        int settled = slip;
        while (settled < end && t[settled] - t[slip] < SETTLING) {
            settled++;
        }
        double held = t[end] - t[slip];
        if (!(held >= SHORTEST_STEADY) || !(peak > 0)) {
            findings.add(new Finding.NoSteadyPull(Math.max(0, held)));
            return new Pull(peak, null, null, log.seconds(), findings);
        }
        return new Pull(peak, middle(force, settled, end), t[slip], log.seconds(), findings);
    }

    private static List<Finding> findings(Log log) {
        List<Finding> findings = new ArrayList<>();
        List<Integer> starts = Quality.starts(log);
        if (starts.size() > 1) {
            double seconds = starts.stream()
                    .skip(1)
                    .mapToDouble(i -> log.times()[i] - log.times()[i - 1])
                    .sum();
            findings.add(new Finding.Gaps(starts.size() - 1, seconds));
        }
        int clipped = Quality.clipped(log.channels()[0]);
        if (clipped > 0) {
            findings.add(new Finding.Clipped(0, clipped));
        }
        return findings;
    }

    private static boolean falls(double[] force, int top, int end) {
        return end - top >= 2 && middle(force, top, end) < FALL * force[top];
    }

    private static double[] upright(double[] force) {
        double most = Arrays.stream(force).max().orElse(0);
        double least = Arrays.stream(force).min().orElse(0);
        return -least > most ? Arrays.stream(force).map(f -> -f).toArray() : force.clone();
    }

    private static double[] withoutSpikes(double[] x) {
        double[] smooth = x.clone();
        for (int i = 1; i + 1 < x.length; i++) {
            smooth[i] = Math.max(Math.min(x[i - 1], x[i]), Math.min(Math.max(x[i - 1], x[i]), x[i + 1]));
        }
        smooth[0] = Math.min(x[0], x[1]);
        smooth[x.length - 1] = Math.min(x[x.length - 1], x[x.length - 2]);
        return smooth;
    }

    private static int indexOfMost(double[] x) {
        int most = 0;
        for (int i = 1; i < x.length; i++) {
            most = x[i] > x[most] ? i : most;
        }
        return most;
    }

    private static int last(double[] x, double least) {
        int i = x.length - 1;
        while (i > 0 && x[i] < least) {
            i--;
        }
        return i;
    }

    private static int first(double[] x, double least) {
        int i = 0;
        while (i < x.length - 1 && x[i] < least) {
            i++;
        }
        return i;
    }

    private static double middle(double[] x, int from, int to) {
        double[] part = Arrays.copyOfRange(x, from, Math.max(from, to) + 1);
        Arrays.sort(part);
        int n = part.length;
        return (part[(n - 1) / 2] + part[n / 2]) / 2;
    }
}
