package footing.core.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Hours left on a set from tread depths read along the way, down to a wear limit.
 *
 * <p>Repeated readings of one set say little of another, so each set has a level and a slope of its own; slopes are
 * normal about a common one whose spread τ is summed over on a grid (half-normal prior of 0.3 of the common slope,
 * common practice, no source). The chance that the limit is reached by hour h is Student's distribution function at
 * (limit − ȳ − b(h − h̄))/√(s²/n + V(h − h̄)²), averaged over τ; its quantiles are Fieller's limits, exactly so for a
 * single set. If the slope can't be told from none at 95 %, the answer is refused.
 */
public final class TreadWear {
    private static final int TAUS = 41;
    private static final double SURE = 0.975;

    private final List<Slope> slopes = new ArrayList<>();
    private final double variance;
    private final int freedom;

    /** The readings of one set: operating hours and depths, in order. */
    public record Readings(String set, List<Double> hours, List<Double> depths) {
        public Readings {
            hours = List.copyOf(hours);
            depths = List.copyOf(depths);
            if (hours.isEmpty() || hours.size() != depths.size()) {
                throw new IllegalArgumentException(hours.size() + " hours for " + depths.size() + " depths");
            }
        }

        private boolean hasSlope() {
            return hours.stream().distinct().count() > 1;
        }

        private Line line() {
            return Line.of(array(hours), array(depths));
        }

        private static double[] array(List<Double> values) {
            return values.stream().mapToDouble(v -> v).toArray();
        }

        double lastHours() {
            return hours.stream().mapToDouble(v -> v).max().orElseThrow();
        }
    }

    /**
     * When a set will be down to the limit.
     *
     * @param readings of this set
     * @param wear depth lost per hour
     * @param left hours from the last reading to the limit, at the middle of what is known
     */
    public record HoursLeft(String set, int readings, double wear, double left, Limits limits) {}

    private record Slope(String set, double slope, double squares) {}

    /** What is held of one set's slope at one τ: normal. */
    private record Known(double weight, double slope, double variance) {}

    public TreadWear(List<Readings> sets) {
        double residual = 0;
        int free = 0;
        for (Readings r : sets) {
            if (r.hasSlope()) {
                Line line = r.line();
                slopes.add(new Slope(r.set, line.slope(), line.squaresX()));
                residual += line.residual();
                free += line.n() - 2;
            }
        }
        freedom = free;
        variance = free > 0 ? residual / free : Double.NaN;
    }

    /** Hours until the set is down to {@code limit}; empty if the readings don't tell. */
    public Optional<HoursLeft> left(Readings set, double limit, double share) {
        Limits.checked(share);
        if (freedom < 1 || !(variance > 0)) {
            return Optional.empty();
        }
        List<Known> known = known(set.set());
        TDistribution t = new TDistribution(freedom);
        double falling = 0;
        for (Known k : known) {
            falling += k.weight * t.cumulativeProbability(-k.slope / Math.sqrt(k.variance));
        }
        if (!(falling > SURE)) {
            return Optional.empty();
        }
        int n = set.hours.size();
        double meanHours = set.hours.stream().mapToDouble(v -> v).average().orElseThrow();
        double meanDepth = set.depths.stream().mapToDouble(v -> v).average().orElseThrow();
        DoubleUnaryOperator reached = h -> {
            double chance = 0;
            for (Known k : known) {
                double off = h - meanHours;
                double error = Math.sqrt(variance / n + k.variance * off * off);
                chance += k.weight * t.cumulativeProbability((limit - meanDepth - k.slope * off) / error);
            }
            return chance;
        };
        double tail = (1 - share) / 2;
        double mean = known.stream().mapToDouble(k -> k.weight * k.slope).sum();
        double step = Math.max(Math.abs((limit - meanDepth) / mean) / 8, 1);
        double last = set.lastHours();
        double low = quantile(reached, tail, meanHours, step) - last;
        double high = quantile(reached, 1 - tail, meanHours, step) - last;
        double middle = quantile(reached, 0.5, meanHours, step) - last;
        return Optional.of(new HoursLeft(set.set, n, -mean, middle, new Limits(low, high)));
    }

    private static double quantile(DoubleUnaryOperator reached, double p, double start, double step) {
        DoubleUnaryOperator f = h -> reached.applyAsDouble(h) - p;
        double way = f.applyAsDouble(start) < 0 ? step : -step;
        return Roots.outward(f, start, way, 1e9).orElse(way > 0 ? Double.POSITIVE_INFINITY : start);
    }

    /** The set's slope given the others', by τ. */
    private List<Known> known(String set) {
        List<Slope> own = slopes.stream().filter(s -> s.set.equals(set)).toList();
        List<Slope> others = slopes.stream().filter(s -> !s.set.equals(set)).toList();
        if (others.isEmpty()) {
            return own.isEmpty()
                    ? List.of(new Known(1, 0, 1))
                    : List.of(new Known(1, own.get(0).slope, variance / own.get(0).squares));
        }
        double widest = 3 * 0.3 * Math.abs(common(slopes, 0).slope);
        double[] logs = new double[TAUS];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < TAUS; i++) {
            logs[i] = logOf(widest * i / (TAUS - 1), widest / 3);
            most = Math.max(most, logs[i]);
        }
        double sum = 0;
        for (int i = 0; i < TAUS; i++) {
            logs[i] = Math.exp(logs[i] - most);
            sum += logs[i];
        }
        List<Known> known = new ArrayList<>();
        for (int i = 0; i < TAUS; i++) {
            known.add(known(own, others, widest * i / (TAUS - 1), logs[i] / sum));
        }
        return known;
    }

    private Known known(List<Slope> own, List<Slope> others, double tau, double weight) {
        Known common = common(others, tau);
        double spread = common.variance + tau * tau;
        if (own.isEmpty()) {
            return new Known(weight, common.slope, spread);
        }
        double error = variance / own.get(0).squares;
        double precision = 1 / spread + 1 / error;
        double slope = (common.slope / spread + own.get(0).slope / error) / precision;
        return new Known(weight, slope, 1 / precision);
    }

    /** The common slope and its variance at τ, weighted by precision. */
    private Known common(List<Slope> of, double tau) {
        double weights = 0;
        double sum = 0;
        for (Slope s : of) {
            double weight = 1 / (variance / s.squares + tau * tau);
            weights += weight;
            sum += weight * s.slope;
        }
        return new Known(1, sum / weights, 1 / weights);
    }

    /** Log density of τ given all slopes, the common one integrated out. */
    private double logOf(double tau, double scale) {
        Known common = common(slopes, tau);
        double log = Math.log(common.variance) / 2 - tau * tau / (2 * scale * scale);
        for (Slope s : slopes) {
            double spread = variance / s.squares + tau * tau;
            double off = s.slope - common.slope;
            log -= (Math.log(spread) + off * off / spread) / 2;
        }
        return log;
    }
}
