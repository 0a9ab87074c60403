package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What makes a natural cubic spline one; every expectation is derived. */
class NaturalSplineTest {
    private static final double[] KNOTS = {-3, -1, -0.4, 0, 0.4, 1, 3};
    private static final NaturalSpline SPLINE = new NaturalSpline(KNOTS);

    private static double[] at(double z) {
        double[] row = new double[SPLINE.size()];
        SPLINE.fill(z, row, 0);
        return row;
    }

    @Test
    void size_sevenKnots_isSixWithoutTheIntercept() {
        assertThat(SPLINE.size()).isEqualTo(6);
        assertThat(at(0.7)[0]).isEqualTo(0.7);
    }

    @Test
    void fill_beyondTheOuterKnots_isLinear() {
        for (double z : new double[] {-9, -4, 4, 9}) {
            double[] before = at(z - 0.5);
            double[] here = at(z);
            double[] after = at(z + 0.5);
            for (int c = 0; c < here.length; c++) {
                assertThat(before[c] - 2 * here[c] + after[c]).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Test
    void fill_betweenKnots_isCubic() {
        for (int k = 1; k < KNOTS.length; k++) {
            double h = (KNOTS[k] - KNOTS[k - 1]) / 4;
            double[][] x = new double[5][];
            for (int i = 0; i < 5; i++) {
                x[i] = at(KNOTS[k - 1] + i * h);
            }
            for (int c = 0; c < SPLINE.size(); c++) {
                double fourth = x[0][c] - 4 * x[1][c] + 6 * x[2][c] - 4 * x[3][c] + x[4][c];
                assertThat(fourth).isCloseTo(0, within(1e-10));
            }
        }
    }

    /** Value, slope and curvature meet at the knots: second differences on either side agree as the step shrinks. */
    @Test
    void fill_atAKnot_isSmoothToTheSecondDerivative() {
        double h = 1e-3;
        for (double knot : KNOTS) {
            double[][] x = new double[5][];
            for (int i = 0; i < 5; i++) {
                x[i] = at(knot + (i - 2) * h);
            }
            for (int c = 0; c < SPLINE.size(); c++) {
                double left = (x[0][c] - 2 * x[1][c] + x[2][c]) / (h * h);
                double right = (x[2][c] - 2 * x[3][c] + x[4][c]) / (h * h);
                assertThat(right).isCloseTo(left, within(100 * h));
            }
        }
    }

    @Test
    void fit_linearFunction_isReproduced() {
        double[][] rows = new double[400][];
        double[] y = new double[rows.length];
        double[] uniform = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            uniform[i] = (i * 0.618034) % 1;
        }
        double[] scores = InformationValue.scores(uniform);
        for (int i = 0; i < rows.length; i++) {
            rows[i] = at(scores[i]);
            y[i] = 1234.5 - 67.8 * scores[i];
        }
        assertThat(new LeastSquares(rows).fit(y).values).containsExactly(y, within(1e-8));
    }

    @Test
    void spline_knotsThatDoNotIncrease_areRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NaturalSpline(new double[] {0, 1, 1, 2}));
        assertThatIllegalArgumentException().isThrownBy(() -> new NaturalSpline(new double[] {0, Double.NaN, 1}));
    }
}
