package footing.core.renewal;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * Convolutions with a distribution on an even grid, by the trapezoid rule for Stieltjes integrals, carried to the limit
 * of fine grids (Richardson).
 *
 * <p>If the distribution rises like t^order from 0, the error falls with the grid step h as h², h^(1 + order) and
 * h^(1 + 2 order), then faster; four grids remove the three.
 */
final class StieltjesGrid {

    private static final int COARSEST = 500;

    private final double[] masses;

    /** Masses of the cells between the points 0, h … n h, and nothing at 0 itself. */
    private StieltjesGrid(double[] masses) {
        this.masses = masses;
    }

    /** A quantity computed on grids of 500 to 4000 cells over (0, horizon) and extrapolated. */
    static double limit(
            DoubleUnaryOperator cumulative,
            double order,
            double rate,
            double horizon,
            Function<StieltjesGrid, Double> quantity) {
        double[] values = new double[4];
        for (int i = 0; i < values.length; i++) {
            values[i] = quantity.apply(of(cumulative, rate, horizon, COARSEST << i));
        }
        for (double power : new double[] {2, 1 + order, 1 + 2 * order}) {
            double factor = Math.pow(2, power);
            double[] finer = values;
            values = new double[finer.length - 1];
            Arrays.setAll(values, i -> (factor * finer[i + 1] - finer[i]) / (factor - 1));
        }
        return values[0];
    }

    /** Cells of e^(-rate t) dF(t). */
    private static StieltjesGrid of(DoubleUnaryOperator cumulative, double rate, double horizon, int cells) {
        double h = horizon / cells;
        double[] masses = new double[cells];
        Arrays.setAll(masses, j -> {
            double mass = cumulative.applyAsDouble((j + 1) * h) - cumulative.applyAsDouble(j * h);
            return mass * (Math.exp(-rate * j * h) + Math.exp(-rate * (j + 1) * h)) / 2;
        });
        return new StieltjesGrid(masses);
    }

    /** The distribution itself, at the points. */
    double[] cumulative() {
        double[] sums = new double[masses.length + 1];
        for (int i = 0; i < masses.length; i++) {
            sums[i + 1] = sums[i] + masses[i];
        }
        return sums;
    }

    /** Solves M = F + M * dF. */
    double[] renewal() {
        double[] forcing = cumulative();
        double[] solution = new double[forcing.length];
        for (int i = 1; i < solution.length; i++) {
            double sum = forcing[i] + inner(solution, i);
            solution[i] = sum / (1 - masses[0] / 2);
        }
        return solution;
    }

    /** Values of g * dF at the points, for g that is 0 at 0. */
    double[] convolved(double[] values) {
        double[] result = new double[values.length];
        for (int i = 1; i < result.length; i++) {
            result[i] = inner(values, i) + values[i] * masses[0] / 2;
        }
        return result;
    }

    /** A grid whose masses are the steps of rising values. */
    static StieltjesGrid ofSteps(double[] values) {
        double[] steps = new double[values.length - 1];
        Arrays.setAll(steps, i -> values[i + 1] - values[i]);
        return new StieltjesGrid(steps);
    }

    private double inner(double[] values, int i) {
        double sum = 0;
        for (int j = 1; j < i; j++) {
            sum += values[i - j] * (masses[j - 1] + masses[j]) / 2;
        }
        return sum;
    }
}
