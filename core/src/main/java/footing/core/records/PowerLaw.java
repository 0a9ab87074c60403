package footing.core.records;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whether worn tires go flat more: flats of a set come with intensity λβt^(β−1) at age t, pooled over sets, each
 * watched from one age to another. β above 1: more the older.
 *
 * <p>Maximum likelihood: n/β + Σ ln t − n·Σ(T^β ln T − S^β ln S)/Σ(T^β − S^β) = 0 over windows from S to T, λ =
 * n/Σ(T^β − S^β).
 *
 * <p>Source: L. H. Crow, "Reliability Analysis for Complex, Repairable Systems", in Reliability and Biometry, SIAM
 * 1974, and MIL-HDBK-189 (1981) (both from memory); NIST/SEMATECH e-Handbook 8.4.5.2.
 */
public final class PowerLaw {
    private static final double LEAST = 0.02;
    private static final double MOST = 60;
    /** Of many flats; from memory of MIL-HDBK-189 (1981), table C, and tried by simulation. */
    private static final double MOST_MISFIT = 0.22;

    private final List<Window> windows;
    private final int events;
    private final double unit;
    private final double logs;
    private final double shape;

    /**
     * One set and the ages at which it went flat while it was watched.
     *
     * @param from its age when watching began, 0 for a new set
     */
    public record Window(double from, double to, List<Double> ages) {
        public Window {
            ages = List.copyOf(ages);
            double first = from;
            double last = to;
            if (!(from >= 0 && to > from && ages.stream().allMatch(t -> t > 0 && t >= first && t <= last))) {
                throw new IllegalArgumentException("flats at " + ages + " of a set watched from " + from + " to " + to);
            }
        }
    }

    private PowerLaw(List<Window> windows) {
        this.windows = windows;
        events = windows.stream().mapToInt(w -> w.ages.size()).sum();
        double longest = windows.stream().mapToDouble(Window::to).max().orElseThrow();
        unit = longest;
        logs = windows.stream()
                .flatMap(w -> w.ages.stream())
                .mapToDouble(t -> Math.log(t / longest))
                .sum();
        boolean inside = score(LEAST) > 0 && score(MOST) < 0;
        shape = inside
                ? Math.exp(Roots.between(ln -> score(Math.exp(ln)), Math.log(LEAST), Math.log(MOST)))
                : Double.NaN;
    }

    /** The best fit; empty with fewer than two flats or if all come at one end, so that no shape is the best. */
    public static Optional<PowerLaw> of(List<Window> windows) {
        int events = windows.stream().mapToInt(w -> w.ages.size()).sum();
        return events < 2
                ? Optional.empty()
                : Optional.of(new PowerLaw(List.copyOf(windows))).filter(law -> law.shape > 0);
    }

    public double shape() {
        return shape;
    }

    /** λ, in flats per hour to the power of the shape. */
    public double rate() {
        return events / (power(shape, false) * Math.pow(unit, shape));
    }

    public int events() {
        return events;
    }

    /** Flats per hour of one set at an age. */
    public double intensity(double age) {
        return rate() * shape * Math.pow(age, shape - 1);
    }

    public double logLikelihood() {
        return profile(shape);
    }

    /** Likelihood-ratio limits of the shape. */
    public Limits limits(double share) {
        double drop = new ChiSquaredDistribution(1).inverseCumulativeProbability(Limits.checked(share)) / 2;
        DoubleUnaryOperator above = ln -> profile(Math.exp(ln)) - profile(shape) + drop;
        OptionalDouble low = Roots.outward(above, Math.log(shape), -0.05, 20);
        OptionalDouble high = Roots.outward(above, Math.log(shape), 0.05, 20);
        return new Limits(
                low.isPresent() ? Math.exp(low.getAsDouble()) : 0,
                high.isPresent() ? Math.exp(high.getAsDouble()) : Double.POSITIVE_INFINITY);
    }

    /** Twice the log likelihood gained over flats that come evenly: chi-squared with one degree of freedom. */
    public double gainOverEven() {
        return 2 * (profile(shape) - profile(1));
    }

    /** The shape without most of the bias of the best fit: times (n − 1)/n. */
    public double unbiasedShape() {
        return shape * (events - 1) / events;
    }

    /**
     * How badly the flats follow the law, by Cramér and von Mises: 1/(12n) + Σ(u − (2i − 1)/(2n))², u the share of its
     * set's flats due by the i-th of all flats, in order of u.
     */
    public double misfit() {
        double b = unbiasedShape();
        double[] shares = windows.stream()
                .flatMapToDouble(w -> w.ages.stream().mapToDouble(t -> due(w, t, b)))
                .sorted()
                .toArray();
        double sum = 1 / (12.0 * events);
        for (int i = 0; i < events; i++) {
            double off = shares[i] - (2 * i + 1) / (2.0 * events);
            sum += off * off;
        }
        return sum;
    }

    private static double due(Window w, double t, double b) {
        double from = Math.pow(w.from / w.to, b);
        return (Math.pow(t / w.to, b) - from) / (1 - from);
    }

    /** True if flats that do follow the law would look worse than these less than one time in twenty. */
    public boolean fitsPoorly() {
        return misfit() > MOST_MISFIT;
    }

    /**
     * The effect of wear as the money model states it: the intensity at age share a is 1 + g(a − ½) times its mean.
     * Both put the same share of a life's flats into its second half: g = 4 − 8·2^(−β).
     */
    public static double wornTireEffect(double shape) {
        return 4 - 8 * Math.pow(2, -shape);
    }

    /**
     * Laplace's statistic, standard normal if flats come evenly; positive means more the older.
     */
    public double laplace() {
        double above = 0;
        double variance = 0;
        for (Window w : windows) {
            for (double t : w.ages) {
                above += t - (w.from + w.to) / 2;
                variance += (w.to - w.from) * (w.to - w.from) / 12;
            }
        }
        return above / Math.sqrt(variance);
    }

    /**
     * 2Σ ln(T/t), chi-squared with 2n degrees of freedom if flats come evenly; small means more the older.
     *
     * @throws IllegalStateException if a set wasn't watched from new
     */
    public double militaryHandbook() {
        if (windows.stream().anyMatch(w -> w.from > 0)) {
            throw new IllegalStateException("a set was not watched from new");
        }
        return 2
                * windows.stream()
                        .flatMapToDouble(w -> w.ages.stream().mapToDouble(t -> Math.log(w.to / t)))
                        .sum();
    }

    private double score(double b) {
        return events / b + logs - events * power(b, true) / power(b, false);
    }

    private double profile(double b) {
        return events * Math.log(events / power(b, false))
                + events * Math.log(b)
                + (b - 1) * logs
                - events
                - events * Math.log(unit);
    }

    /** Σ(T^b − S^b), or with {@code logged} Σ(T^b ln T − S^b ln S), in units of the oldest age. */
    private double power(double b, boolean logged) {
        double sum = 0;
        for (Window w : windows) {
            sum += term(w.to / unit, b, logged) - (w.from > 0 ? term(w.from / unit, b, logged) : 0);
        }
        return sum;
    }

    private static double term(double x, double b, boolean logged) {
        double power = Math.pow(x, b);
        return logged ? power * Math.log(x) : power;
    }
}
