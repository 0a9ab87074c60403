package footing.core.records;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
    private static final int MOST_STEPS = 1_000;

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
        List<Watch> watches = windows.stream().map(Watch::new).toList();
        double[] off = new double[windows.size()];
        double mean = 0;
        List<Step> steps = new ArrayList<>();
        for (double age : ages(windows)) {
            int atRisk = 0;
            int flats = 0;
            for (Watch w : watches) {
                w.goTo(age);
                atRisk += w.watched ? 1 : 0;
                flats += w.flats;
            }
            double each = (double) flats / atRisk;
            mean += each;
            for (int i = 0; i < off.length; i++) {
                Watch w = watches.get(i);
                off[i] += w.watched ? (w.flats - each) / atRisk : 0;
            }
            double variance = DoubleStream.of(off).map(x -> x * x).sum();
            steps.add(new Step(age, atRisk, flats, mean, Math.sqrt(variance)));
        }
        return new MeanCumulative(steps);
    }

    /** Ages at which sets went flat; of very many only the last of each of {@value #MOST_STEPS} equal parts. */
    private static double[] ages(List<PowerLaw.Window> windows) {
        double[] all = windows.stream()
                .flatMapToDouble(w -> w.ages().stream().mapToDouble(t -> t))
                .sorted()
                .distinct()
                .toArray();
        if (all.length <= MOST_STEPS) {
            return all;
        }
        return IntStream.rangeClosed(1, MOST_STEPS)
                .mapToDouble(k -> all[(int) ((long) k * all.length / MOST_STEPS) - 1])
                .toArray();
    }

    /** One set, gone through by age. */
    private static final class Watch {
        private final double from;
        private final double to;
        private final double[] ages;
        private int next;

        /** Whether it was watched at the age gone to, and the flats it had since the age before. */
        boolean watched;

        int flats;

        Watch(PowerLaw.Window window) {
            from = window.from();
            to = window.to();
            ages = window.ages().stream().mapToDouble(t -> t).sorted().toArray();
        }

        void goTo(double age) {
            flats = 0;
            while (next < ages.length && ages[next] <= age) {
                next++;
                flats++;
            }
            // A flat in the first hour of a watch is put at its beginning.
            watched = (from < age || flats > 0) && (to >= age || flats > 0);
        }
    }

    public List<Step> steps() {
        return steps;
    }
}
