package footing.core.answer;

import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Ordinary least squares of several responses on the same rows, an intercept among the columns, by the normal equations
 * of columns brought to mean 0 and variance 1. Directions without variance are left out.
 */
final class LeastSquares {
    private static final double NO_VARIANCE = 1e-10;

    private final double[][] rows;
    private final int columns;
    private final double[] center;
    private final double[] spread;
    private final RealMatrix inverse;
    private final int rank;

    /**
     * @param rows one a case, each with the columns but no intercept; changed in place to standard columns
     */
    LeastSquares(double[][] rows) {
        this.rows = rows;
        columns = rows[0].length;
        center = new double[columns];
        spread = new double[columns];
        standardize();
        double[][] gram = new double[columns][columns];
        for (double[] row : rows) {
            for (int i = 0; i < columns; i++) {
                for (int j = 0; j <= i; j++) {
                    gram[i][j] += row[i] * row[j];
                }
            }
        }
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < i; j++) {
                gram[j][i] = gram[i][j];
            }
        }
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(gram));
        double[] values = eigen.getEigenvalues();
        double[] reciprocal = new double[columns];
        int kept = 0;
        for (int i = 0; i < columns; i++) {
            boolean keep = values[i] > NO_VARIANCE * values[0];
            reciprocal[i] = keep ? 1 / values[i] : 0;
            kept += keep ? 1 : 0;
        }
        rank = kept;
        inverse = eigen.getV()
                .multiply(MatrixUtils.createRealDiagonalMatrix(reciprocal))
                .multiply(eigen.getVT());
    }

    private void standardize() {
        int n = rows.length;
        for (int c = 0; c < columns; c++) {
            double sum = 0;
            double squares = 0;
            for (double[] row : rows) {
                sum += row[c];
            }
            center[c] = sum / n;
            for (double[] row : rows) {
                squares += (row[c] - center[c]) * (row[c] - center[c]);
            }
            spread[c] = squares > 0 ? Math.sqrt(squares / n) : 1;
            for (double[] row : rows) {
                row[c] = (row[c] - center[c]) / spread[c];
            }
        }
    }

    /** A fitted response. */
    final class Fit {
        /** By row. */
        final double[] values;
        /** Probability of so good a fit if no column mattered. */
        final double significance;

        private final double variance;

        Fit(double[] values, double significance, double variance) {
            this.values = values;
            this.significance = significance;
            this.variance = variance;
        }

        /** Standard error of the fitted value of a row. */
        double error(int row) {
            return Math.sqrt(variance * leverage(rows[row]));
        }
    }

    Fit fit(double[] response) {
        int n = rows.length;
        double mean = 0;
        for (double y : response) {
            mean += y / n;
        }
        double[] moments = new double[columns];
        double total = 0;
        for (int i = 0; i < n; i++) {
            double y = response[i] - mean;
            total += y * y;
            for (int c = 0; c < columns; c++) {
                moments[c] += rows[i][c] * y;
            }
        }
        double[] beta = inverse.operate(new ArrayRealVector(moments, false)).toArray();
        double[] fitted = new double[n];
        double residual = 0;
        for (int i = 0; i < n; i++) {
            double value = 0;
            for (int c = 0; c < columns; c++) {
                value += beta[c] * rows[i][c];
            }
            fitted[i] = mean + value;
            residual += (response[i] - fitted[i]) * (response[i] - fitted[i]);
        }
        int freedom = n - rank - 1;
        return new Fit(fitted, significance(total, residual, freedom), residual / freedom);
    }

    private double significance(double total, double residual, int freedom) {
        if (!(total > residual) || rank == 0) {
            return 1;
        }
        double f = (total - residual) / rank / (residual / freedom);
        return residual > 0 ? 1 - new FDistribution(rank, freedom).cumulativeProbability(f) : 0;
    }

    private double leverage(double[] row) {
        double[] image = inverse.operate(row);
        double leverage = 1.0 / rows.length;
        for (int c = 0; c < columns; c++) {
            leverage += row[c] * image[c];
        }
        return leverage;
    }
}
