package footing.core.records;

import footing.core.chance.Sample;
import java.util.List;
import java.util.Optional;

/**
 * How long a fix takes until the machine cuts again: the 10th, 50th and 90th percentile of the times written down;
 * with fewer than {@value #ENOUGH} the stated three-point stands.
 */
public record FixDelay(String name, int count, Optional<Quantiles> minutes) {
    public static final int ENOUGH = 8;

    /** In minutes. */
    public record Quantiles(double low, double likely, double high) {}

    public static FixDelay of(String name, List<Double> minutes) {
        if (minutes.size() < ENOUGH) {
            return new FixDelay(name, minutes.size(), Optional.empty());
        }
        double[] at = new Sample(minutes.stream().mapToDouble(m -> m).toArray()).percentiles(0.1, 0.5, 0.9);
        return new FixDelay(name, minutes.size(), Optional.of(new Quantiles(at[0], at[1], at[2])));
    }
}
