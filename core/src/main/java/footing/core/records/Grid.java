package footing.core.records;

import java.util.function.DoubleBinaryOperator;

/**
 * A posterior density of two quantities on a grid: coarse first, then over the box that holds what isn't negligible,
 * so that much evidence and little are both met by points that fit.
 *
 * <p>Weights add up to 1. Smooth densities that vanish at the edges are summed by the trapezoid rule far better than
 * its order says; a box is kept until its density has fallen by e^−{@value #NEGLIGIBLE}.
 */
final class Grid {
    private static final double NEGLIGIBLE = 18;
    private static final int COARSE = 33;
    private static final int FINE = 81;
    private static final int ZOOMS = 4;

    /** One point: both coordinates and its share. */
    record Cell(double u, double v, double weight) {}

    /** Where to look. */
    record Box(double uLow, double uHigh, double vLow, double vHigh) {
        double u(int i, int points) {
            return uLow + (uHigh - uLow) * i / (points - 1);
        }

        double v(int i, int points) {
            return vLow + (vHigh - vLow) * i / (points - 1);
        }
    }

    private final Box box;
    private final double[][] weights;

    private Grid(Box box, double[][] weights) {
        this.box = box;
        this.weights = weights;
    }

    static Grid of(DoubleBinaryOperator logDensity, Box widest) {
        Box box = widest;
        for (int i = 0; i < ZOOMS; i++) {
            box = held(logs(logDensity, box, COARSE), box);
        }
        double[][] logs = logs(logDensity, box, FINE);
        double most = most(logs);
        double sum = 0;
        for (double[] row : logs) {
            for (int j = 0; j < FINE; j++) {
                row[j] = Math.exp(row[j] - most);
                sum += row[j];
            }
        }
        for (double[] row : logs) {
            for (int j = 0; j < FINE; j++) {
                row[j] /= sum;
            }
        }
        return new Grid(box, logs);
    }

    private static double[][] logs(DoubleBinaryOperator logDensity, Box box, int points) {
        double[][] logs = new double[points][points];
        for (int i = 0; i < points; i++) {
            for (int j = 0; j < points; j++) {
                double log = logDensity.applyAsDouble(box.u(i, points), box.v(j, points));
                logs[i][j] = Double.isNaN(log) ? Double.NEGATIVE_INFINITY : log;
            }
        }
        return logs;
    }

    private static double most(double[][] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double[] row : logs) {
            for (double log : row) {
                most = Math.max(most, log);
            }
        }
        if (!(most > Double.NEGATIVE_INFINITY && most < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the density is nowhere a finite number");
        }
        return most;
    }

    /** The part of the box that isn't negligible and one point around it. */
    private static Box held(double[][] logs, Box box) {
        double floor = most(logs) - NEGLIGIBLE;
        int[] ends = {COARSE, -1, COARSE, -1};
        for (int i = 0; i < COARSE; i++) {
            for (int j = 0; j < COARSE; j++) {
                if (logs[i][j] >= floor) {
                    ends[0] = Math.min(ends[0], i);
                    ends[1] = Math.max(ends[1], i);
                    ends[2] = Math.min(ends[2], j);
                    ends[3] = Math.max(ends[3], j);
                }
            }
        }
        return new Box(
                box.u(Math.max(ends[0] - 1, 0), COARSE),
                box.u(Math.min(ends[1] + 1, COARSE - 1), COARSE),
                box.v(Math.max(ends[2] - 1, 0), COARSE),
                box.v(Math.min(ends[3] + 1, COARSE - 1), COARSE));
    }

    /** The points with at least this share. */
    java.util.List<Cell> cells(double least) {
        java.util.List<Cell> cells = new java.util.ArrayList<>();
        for (int i = 0; i < FINE; i++) {
            for (int j = 0; j < FINE; j++) {
                if (weights[i][j] >= least) {
                    cells.add(new Cell(box.u(i, FINE), box.v(j, FINE), weights[i][j]));
                }
            }
        }
        return cells;
    }

    double mean(DoubleBinaryOperator of) {
        double mean = 0;
        for (Cell cell : cells(Double.MIN_VALUE)) {
            mean += cell.weight * of.applyAsDouble(cell.u, cell.v);
        }
        return mean;
    }

    /** What is known of e^u. */
    Posterior first() {
        double[] density = new double[FINE];
        for (int i = 0; i < FINE; i++) {
            for (int j = 0; j < FINE; j++) {
                density[i] += weights[i][j];
            }
        }
        return new Posterior(box.uLow, box.uHigh, density);
    }

    /** What is known of e^v. */
    Posterior second() {
        double[] density = new double[FINE];
        for (int i = 0; i < FINE; i++) {
            for (int j = 0; j < FINE; j++) {
                density[j] += weights[i][j];
            }
        }
        return new Posterior(box.vLow, box.vHigh, density);
    }
}
