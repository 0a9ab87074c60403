package footing.core.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whether sets of one kind last longer than sets of another, with no shape of lives assumed: the log-rank test, and how
 * many times as often a set of the first kind wears out as one of the second at the same age (proportional hazards).
 *
 * <p>At each age at which sets wore out, n₁ of n sets at risk are of the first kind. Log-rank: χ² = (Σ(d₁ − dn₁/n))² /
 * Σ d(n₁/n)(1 − n₁/n)(n − d)/(n − 1) with one degree of freedom. The ratio e^b maximizes the partial likelihood, worn
 * sets of one age broken by Efron's rule; its limits are those of the likelihood ratio. A set that was already worn when
 * recording began is at risk from its entry on. Machines differ too: what is told of the kinds is told on the machines
 * that carried them.
 *
 * <p>Source: D. R. Cox, "Regression Models and Life-Tables", Journal of the Royal Statistical Society B 34 (1972)
 * 187–220; B. Efron, Journal of the American Statistical Association 72 (1977) 557–565 (both from memory).
 */
public final class LifeContrast {
    private static final double FARTHEST = 12;
    /** Stands for a ratio without end: its likelihood differs from the limit by less than rounding. */
    private static final double ENDLESS = 36;

    /** Up to so many sets every way to share them out is tried. */
    private static final int FEW = 14;

    private final List<Moment> moments;
    private final boolean efron;
    private final double logRatio;

    /** What is seen at one age: sets at risk and worn out, of the first kind and of the second. */
    private record Moment(int first, int second, int firstWorn, int secondWorn) {
        int worn() {
            return firstWorn + secondWorn;
        }

        double expected() {
            return (double) worn() * first / (first + second);
        }

        double variance() {
            double n = first + (double) second;
            return n > 1 ? worn() * (first / n) * (second / n) * (n - worn()) / (n - 1) : 0;
        }
    }

    private LifeContrast(List<Moment> moments, boolean efron, double logRatio) {
        this.moments = moments;
        this.efron = efron;
        this.logRatio = logRatio;
    }

    /** The contrast; empty if sets of both kinds were never at risk together when one wore out. */
    public static Optional<LifeContrast> of(List<Life> first, List<Life> second) {
        return of(first, second, true);
    }

    /** @param efron false for Breslow's rule, which takes all sets worn out at one age as still at risk */
    static Optional<LifeContrast> of(List<Life> first, List<Life> second, boolean efron) {
        List<Moment> moments = moments(first, second);
        if (moments.stream().noneMatch(m -> m.first > 0 && m.second > 0)) {
            return Optional.empty();
        }
        DoubleUnaryOperator score = b -> new LifeContrast(moments, efron, b).score();
        double start = score.applyAsDouble(0);
        double toward = start > 0 ? 1 : -1;
        double best =
                start == 0 ? 0 : Roots.outward(score, 0, toward / 4, FARTHEST).orElse(toward * ENDLESS);
        return Optional.of(new LifeContrast(moments, efron, best));
    }

    private static List<Moment> moments(List<Life> first, List<Life> second) {
        double[] ages = DoubleStream.concat(worn(first), worn(second))
                .sorted()
                .distinct()
                .toArray();
        Kind one = new Kind(first);
        Kind other = new Kind(second);
        List<Moment> moments = new ArrayList<>();
        for (double age : ages) {
            moments.add(new Moment(one.atRisk(age), other.atRisk(age), one.wornAt(age), other.wornAt(age)));
        }
        return moments;
    }

    /** The lives of one kind, to be counted by age. */
    private static final class Kind {
        private final Sorted entries;
        private final Sorted exits;
        private final Sorted worn;

        Kind(List<Life> lives) {
            entries = new Sorted(lives.stream().mapToDouble(Life::entry));
            exits = new Sorted(lives.stream().mapToDouble(Life::exit));
            worn = new Sorted(worn(lives));
        }

        /** Sets entered before this age that had not left by it: whoever left had entered. */
        int atRisk(double age) {
            return entries.below(age) - exits.below(age);
        }

        int wornAt(double age) {
            return worn.notAbove(age) - worn.below(age);
        }
    }

    private static DoubleStream worn(List<Life> lives) {
        return lives.stream().filter(Life::wornOut).mapToDouble(Life::exit);
    }

    /** Sets of the first kind that would have worn out if the kinds were alike. */
    public double expected() {
        return moments.stream().mapToDouble(Moment::expected).sum();
    }

    /** The log-rank statistic. */
    public double logRank() {
        double off =
                moments.stream().mapToDouble(m -> m.firstWorn - m.expected()).sum();
        return off * off / moments.stream().mapToDouble(Moment::variance).sum();
    }

    /**
     * The chance of a log-rank statistic as great as this or greater if the kinds are alike: for few sets over every way
     * to call so many of them the first kind, else by chi-squared, which claims too much of few.
     */
    public double chance(List<Life> first, List<Life> second) {
        List<Life> all = new ArrayList<>(first);
        all.addAll(second);
        double seen = logRank();
        if (all.size() > FEW) {
            return 1 - new ChiSquaredDistribution(1).cumulativeProbability(seen);
        }
        int ways = 0;
        int asGreat = 0;
        for (int way = 0; way < 1 << all.size(); way++) {
            if (Integer.bitCount(way) == first.size()) {
                List<Life> one = new ArrayList<>();
                List<Life> other = new ArrayList<>();
                for (int i = 0; i < all.size(); i++) {
                    ((way >> i & 1) == 1 ? one : other).add(all.get(i));
                }
                ways++;
                // Kinds that are never at risk together tell nothing.
                double statistic = new LifeContrast(moments(one, other), efron, 0).logRank();
                asGreat += statistic >= seen * (1 - 1e-9) ? 1 : 0;
            }
        }
        return (double) asGreat / ways;
    }

    /** False if the greater the ratio, or the smaller, the better: then there is a limit at its other end alone. */
    public boolean isFinite() {
        return Math.abs(logRatio) < ENDLESS;
    }

    /** Logarithm of how many times as often a set of the first kind wears out as one of the second, if it is finite. */
    public double logRatio() {
        return logRatio;
    }

    /** Standard error of it, by the observed information. */
    public double error() {
        double information = 0;
        for (Moment m : moments) {
            for (int l = 0; l < m.worn(); l++) {
                double p = share(m, l);
                information += p * (1 - p);
            }
        }
        return 1 / Math.sqrt(information);
    }

    /** Likelihood-ratio limits of the ratio itself. */
    public Limits ratioLimits(double share) {
        double drop = new ChiSquaredDistribution(1).inverseCumulativeProbability(Limits.checked(share)) / 2;
        double floor = logLikelihood() - drop;
        DoubleUnaryOperator above = b -> new LifeContrast(moments, efron, b).logLikelihood() - floor;
        OptionalDouble low = Roots.outward(above, logRatio, -0.05, 2 * ENDLESS);
        OptionalDouble high = Roots.outward(above, logRatio, 0.05, 2 * ENDLESS);
        return new Limits(
                low.isPresent() && logRatio > -ENDLESS ? Math.exp(low.getAsDouble()) : 0,
                high.isPresent() && logRatio < ENDLESS ? Math.exp(high.getAsDouble()) : Double.POSITIVE_INFINITY);
    }

    /** The share of the first kind among what is at risk for the l-th of the sets that wore out at one age. */
    private double share(Moment m, int l) {
        double ratio = Math.exp(logRatio);
        double gone = gone(m, l);
        double first = (m.first - gone * m.firstWorn) * ratio;
        return first / (first + m.second - gone * m.secondWorn);
    }

    private double gone(Moment m, int l) {
        return efron ? (double) l / m.worn() : 0;
    }

    private double score() {
        double score = 0;
        for (Moment m : moments) {
            score += m.firstWorn;
            for (int l = 0; l < m.worn(); l++) {
                score -= share(m, l);
            }
        }
        return score;
    }

    private double logLikelihood() {
        double log = 0;
        for (Moment m : moments) {
            log += m.firstWorn * logRatio;
            for (int l = 0; l < m.worn(); l++) {
                double gone = gone(m, l);
                double first = (m.first - gone * m.firstWorn) * Math.exp(logRatio);
                log -= Math.log(first + m.second - gone * m.secondWorn);
            }
        }
        return log;
    }
}
