package footing.core.money;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * f(x) = Σ c_k e^(-t_k x) with rising times t_k: present value as a function of x = ln(1 + rate), and all its roots.
 *
 * <p>Every real root is found, without a guess. Let τ lie between two neighboring times where the coefficients change
 * sign. The derivative of e^(τx) f(x) is a sum with the same times and the coefficients c_k (τ - t_k), which change sign
 * once less. Its roots, found in the same way, cut the line into stretches on each of which e^(τx) f is monotone, so
 * that each holds at most one root, bracketed by its ends. Source: the proof of Descartes' rule of signs in Pólya &
 * Szegő, <i>Problems and Theorems in Analysis</i> II, part five (from memory).
 */
final class ExponentialSum {

    /** ln of the smallest and largest growth searched: rate from -1 + 1e-15 to 1e300. */
    private static final double LOWEST = -34;

    private static final double HIGHEST = 690;
    private static final double ROOT_ACCURACY = 1e-15;

    /** A turning point this close to 0, against the sum of the terms' sizes, is a double root with rounding. */
    private static final double ZERO_SHARE = 1e-13;

    private static final int MAX_EVALUATIONS = 500;

    private final double[] times;
    private final double[] coefficients;
    private final double[] logSizes;

    /** Times must rise; zero coefficients are dropped. */
    ExponentialSum(double[] times, double[] coefficients) {
        int[] kept = IntStream.range(0, times.length)
                .filter(i -> coefficients[i] != 0)
                .toArray();
        this.times = Arrays.stream(kept).mapToDouble(i -> times[i]).toArray();
        this.coefficients =
                Arrays.stream(kept).mapToDouble(i -> coefficients[i]).toArray();
        this.logSizes =
                Arrays.stream(this.coefficients).map(c -> Math.log(Math.abs(c))).toArray();
    }

    /** Sorts by time and adds up what falls on the same time. */
    static ExponentialSum ofUnordered(double[] times, double[] coefficients) {
        double[] distinct = Arrays.stream(times).sorted().distinct().toArray();
        double[] sums = new double[distinct.length];
        for (int i = 0; i < times.length; i++) {
            sums[Arrays.binarySearch(distinct, times[i])] += coefficients[i];
        }
        return new ExponentialSum(distinct, sums);
    }

    /** Roots in rising order, a double root once. */
    double[] roots() {
        int change = firstSignChange();
        if (change < 0) {
            return new double[0];
        }
        double tau = (times[change] + times[change + 1]) / 2;
        double[] derived = new double[times.length];
        Arrays.setAll(derived, k -> coefficients[k] * (tau - times[k]));
        double[] turns = new ExponentialSum(times, derived).roots();
        List<Double> roots = new ArrayList<>();
        double left = LOWEST;
        for (double right : turns) {
            addRootBetween(left, right, roots);
            if (valueOrZero(right) == 0) {
                roots.add(right);
            }
            left = right;
        }
        addRootBetween(left, HIGHEST, roots);
        return roots.stream()
                .sorted(Comparator.naturalOrder())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private int firstSignChange() {
        for (int k = 0; k + 1 < coefficients.length; k++) {
            if (coefficients[k] > 0 != coefficients[k + 1] > 0) {
                return k;
            }
        }
        return -1;
    }

    private void addRootBetween(double left, double right, List<Double> roots) {
        if (valueOrZero(left) * valueOrZero(right) < 0) {
            BracketingNthOrderBrentSolver solver =
                    new BracketingNthOrderBrentSolver(ROOT_ACCURACY, ROOT_ACCURACY, Double.MIN_NORMAL, 5);
            roots.add(solver.solve(MAX_EVALUATIONS, this::value, left, right, AllowedSolution.ANY_SIDE));
        }
    }

    private double valueOrZero(double x) {
        double value = value(x);
        return Math.abs(value) <= ZERO_SHARE ? 0 : value;
    }

    /** f(x) over the sum of its terms' sizes: same sign and roots, but from -1 to 1, so that nothing overflows. */
    private double value(double x) {
        double largest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < times.length; k++) {
            largest = Math.max(largest, logSizes[k] - times[k] * x);
        }
        double sum = 0;
        double size = 0;
        for (int k = 0; k < times.length; k++) {
            double term = Math.exp(logSizes[k] - times[k] * x - largest);
            sum += Math.copySign(term, coefficients[k]);
            size += term;
        }
        return sum / size;
    }
}
