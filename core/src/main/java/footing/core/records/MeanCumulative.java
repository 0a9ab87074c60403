package footing.core.records;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How many flats a set has had on average by each age, with no law assumed: at each age d/n is added, n the sets under
 * watch at that age and d the flats they had.
 *
 * <p>The error allows for sets that differ: it is the root of Σ over sets of (Σ over ages of (flats of the set − d/n)/n)²,
 * a set counting at the ages at which it was watched. Limits are on the logarithm.
 *
 * <p>Source: W. Nelson, "Graphical Analysis of System Repair Data", Journal of Quality Technology 20 (1988) 24–35; J. F.
 * Lawless, C. Nadeau, Technometrics 37 (1995) 158–168 (both from memory).
 */
public final class MeanCumulative {
    private final List<Step> steps;

    /**
     * One age at which sets went flat.
     *
     * @param atRisk sets under watch
     * @param flats they had at it
     * @param mean flats a set has had on average by then
     * @param error standard error of it
     */
    public record Step(double age, int atRisk, int flats, double mean, double error) {
        public Limits limits(double share) {
            double z = new NormalDistribution().inverseCumulativeProbability((1 + Limits.checked(share)) / 2);
            double factor = Math.exp(z * error / mean);
            return new Limits(mean / factor, mean * factor);
        }
    }

    private MeanCumulative(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    public static MeanCumulative of(List<PowerLaw.Window> windows) {
        double[] ages = windows.stream()
                .flatMapToDouble(w -> w.ages().stream().mapToDouble(t -> t))
                .sorted()
                .distinct()
                .toArray();
        double[] off = new double[windows.size()];
        double mean = 0;
        List<Step> steps = new ArrayList<>();
        for (double age : ages) {
            int atRisk = (int) windows.stream().filter(w -> isWatched(w, age)).count();
            int flats = windows.stream().mapToInt(w -> flats(w, age)).sum();
            double each = (double) flats / atRisk;
            mean += each;
            for (int i = 0; i < off.length; i++) {
                PowerLaw.Window w = windows.get(i);
                off[i] += isWatched(w, age) ? (flats(w, age) - each) / atRisk : 0;
            }
            double variance = DoubleStream.of(off).map(x -> x * x).sum();
            steps.add(new Step(age, atRisk, flats, mean, Math.sqrt(variance)));
        }
        return new MeanCumulative(steps);
    }

    private static boolean isWatched(PowerLaw.Window w, double age) {
        // A flat in the first hour of a watch is put at its beginning.
        return (w.from() < age || w.ages().contains(age)) && w.to() >= age;
    }

    private static int flats(PowerLaw.Window w, double age) {
        return (int) w.ages().stream().filter(t -> t == age).count();
    }

    public List<Step> steps() {
        return steps;
    }
}
