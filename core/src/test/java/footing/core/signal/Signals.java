package footing.core.signal;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;

/** Drawn logs. */
final class Signals {
    private Signals() {}

    /** A signal on the axis of a weighting (first or last), the others at rest, without gravity. */
    static Log log(double rate, double seconds, DoubleUnaryOperator signal, Weighting on) {
        int n = (int) Math.round(rate * seconds) + 1;
        double[] times = new double[n];
        Arrays.setAll(times, i -> i / rate);
        double[] x = Arrays.stream(times).map(signal).toArray();
        double[] still = new double[n];
        double[][] channels = {on == Weighting.WD ? x : still, still, on == Weighting.WK ? x : still};
        return new Log(times, channels);
    }

    static Log map(Log log, DoubleUnaryOperator change) {
        double[][] changed = new double[3][];
        Arrays.setAll(changed, c -> Arrays.stream(log.channels()[c]).map(change).toArray());
        return new Log(log.times(), changed);
    }

    static Ride ride(Log log) {
        return measured(Ride.of(log, AccelerationUnit.METERS_PER_SECOND_SQUARED, OptionalInt.of(2)));
    }

    static Ride measured(Ride.Reading reading) {
        return ((Ride.Measured) reading).ride();
    }
}
