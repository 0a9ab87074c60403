package footing.core.signal;

import java.util.Arrays;

/**
 * Samples of one or more channels over time, as an instrument wrote them.
 *
 * @param times in seconds, each later than the one before
 * @param channels each as long as the times
 */
@SuppressWarnings("ArrayRecordComponent")
public record Log(double[] times, double[][] channels) {
    /** Over an hour of a fast instrument; bounds what a file can cost. */
    public static final int MOST_SAMPLES = 1_000_000;

    public Log {
        int n = times.length;
        if (n < 2 || n > MOST_SAMPLES || channels.length == 0) {
            throw new IllegalArgumentException("a log of " + n + " samples and " + channels.length + " channels");
        }
        for (int i = 1; i < n; i++) {
            if (!(times[i] > times[i - 1])) {
                throw new IllegalArgumentException("the time of sample " + i + " is not after the one before");
            }
        }
        for (double[] channel : channels) {
            if (channel.length != n || !Arrays.stream(channel).allMatch(x -> Math.abs(x) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a channel must be a number at each time");
            }
        }
    }

    public int size() {
        return times.length;
    }

    public double seconds() {
        return times[size() - 1] - times[0];
    }

    /** The middle of the steps between samples, in seconds. */
    public double usualStep() {
        double[] steps = new double[size() - 1];
        Arrays.setAll(steps, i -> times[i + 1] - times[i]);
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    /** The samples from one index to before another. */
    Log part(int from, int to) {
        double[][] parts = new double[channels.length][];
        Arrays.setAll(parts, c -> Arrays.copyOfRange(channels[c], from, to));
        return new Log(Arrays.copyOfRange(times, from, to), parts);
    }
}
