package footing.core.records;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Whether one machine's flats come more and more often over the hours it was watched, and how far apart they are by
 * now.
 *
 * <p>Two tests: 2Σ ln(T/t), chi-squared with 2n degrees of freedom if flats come evenly, and the count of gaps that are
 * shorter than a later one, which takes every order of the gaps for equally likely and assumes nothing of their lengths.
 * A trend is said only if the first holds at 95 % and the second agrees at 90 %. Then the hours between flats at the end
 * are T/(n·b) with b = (n − 1)/Σ ln(T/t).
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.2.3.4 and 8.4.5.2.
 */
public final class FlatsTrend {
    private static final int FEWEST = 4;
    private static final double AGREES = 0.1;
    /** Up to so many gaps every order of them is counted; of more the number of reversals is all but normal. */
    private static final int EXACT = 40;

    private final List<Double> ages;
    private final double hours;

    /** What is said of it. */
    public enum Says {
        MORE,
        LESS,
        CANT_TELL
    }

    /**
     * Gaps shorter than a later one.
     *
     * @param of pairs of gaps
     * @param atLeast the chance of so many or more if the order of the gaps means nothing
     * @param atMost the chance of so many or fewer
     */
    public record Reversals(long count, long of, double atLeast, double atMost) {}

    private FlatsTrend(List<Double> ages, double hours) {
        this.ages = ages;
        this.hours = hours;
    }

    /**
     * The trend; empty with fewer than {@value #FEWEST} flats.
     *
     * @param ages hours from the beginning of the watch to each flat, in order, each above 0 and at most {@code hours}
     * @param hours of the whole watch
     */
    public static Optional<FlatsTrend> of(List<Double> ages, double hours) {
        double before = 0;
        for (double age : ages) {
            if (!(age > 0 && age >= before && age <= hours)) {
                throw new IllegalArgumentException("flats at " + ages + " in " + hours + " hours: out of order");
            }
            before = age;
        }
        boolean allAtTheEnd = ages.stream().allMatch(t -> t == hours);
        return ages.size() < FEWEST || allAtTheEnd
                ? Optional.empty()
                : Optional.of(new FlatsTrend(List.copyOf(ages), hours));
    }

    public int flats() {
        return ages.size();
    }

    public double hours() {
        return hours;
    }

    /** 2Σ ln(T/t): small if flats come more often by and by. */
    public double statistic() {
        return 2 * ages.stream().mapToDouble(t -> Math.log(hours / t)).sum();
    }

    public Reversals reversals() {
        int n = ages.size();
        double[] gaps = new double[n];
        for (int i = 0; i < n; i++) {
            gaps[i] = ages.get(i) - (i == 0 ? 0 : ages.get(i - 1));
        }
        long count = reversals(gaps);
        long of = (long) n * (n - 1) / 2;
        if (n > EXACT) {
            NormalDistribution normal = new NormalDistribution(of / 2.0, Math.sqrt(n * (n - 1.0) * (2 * n + 5.0) / 72));
            return new Reversals(
                    count,
                    of,
                    1 - normal.cumulativeProbability(count - 0.5),
                    normal.cumulativeProbability(count + 0.5));
        }
        double[] chances = chances(n);
        double below = 0;
        for (int i = 0; i < count; i++) {
            below += chances[i];
        }
        return new Reversals(count, of, 1 - below, below + chances[(int) count]);
    }

    /** Pairs of gaps of which the later is the longer, counted from the last gap back by a tree of partial sums. */
    private static long reversals(double[] gaps) {
        Sorted sorted = new Sorted(DoubleStream.of(gaps));
        int[] tree = new int[gaps.length + 1];
        long count = 0;
        for (int i = gaps.length - 1; i >= 0; i--) {
            int later = gaps.length - 1 - i;
            count += later;
            for (int rank = sorted.notAbove(gaps[i]); rank > 0; rank -= rank & -rank) {
                count -= tree[rank];
            }
            for (int rank = sorted.below(gaps[i]) + 1; rank < tree.length; rank += rank & -rank) {
                tree[rank]++;
            }
        }
        return count;
    }

    /** The chance of each number of reversals over all orders of n gaps: the i-th gap adds 0 to i − 1 alike. */
    private static double[] chances(int n) {
        double[] chances = {1};
        for (int i = 2; i <= n; i++) {
            double[] next = new double[chances.length + i - 1];
            for (int r = 0; r < chances.length; r++) {
                for (int add = 0; add < i; add++) {
                    next[r + add] += chances[r] / i;
                }
            }
            chances = next;
        }
        return chances;
    }

    public Says says() {
        ChiSquaredDistribution even = new ChiSquaredDistribution(2.0 * ages.size());
        double below = even.cumulativeProbability(statistic());
        if (below < 0.025 && reversals().atMost <= AGREES) {
            return Says.MORE;
        }
        return below > 0.975 && reversals().atLeast <= AGREES ? Says.LESS : Says.CANT_TELL;
    }

    /** b, without the bias of the best fit. */
    public double shape() {
        return 2 * (ages.size() - 1) / statistic();
    }

    /** Hours between flats at the end of the watch. */
    public double hoursBetween() {
        return hours / (ages.size() * shape());
    }

    /** Limits of them, by the approximation of the source. */
    public Limits hoursBetweenLimits(double share) {
        int n = ages.size();
        double z = new NormalDistribution().inverseCumulativeProbability((1 + Limits.checked(share)) / 2);
        double scaled = hoursBetween() * n * (n - 1);
        double most = n + z * z / 4 + Math.sqrt(n * z * z / 2 + Math.pow(z, 4) / 16);
        double least = n - z * Math.sqrt(n / 2.0);
        return new Limits(scaled / (most * most), least > 0 ? scaled / (least * least) : Double.POSITIVE_INFINITY);
    }
}
