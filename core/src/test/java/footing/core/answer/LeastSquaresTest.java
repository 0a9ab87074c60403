package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Draws;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Least squares against certified values (NIST Statistical Reference Datasets; the data files say how known). */
class LeastSquaresTest {
    private static final double[] NORRIS = {-0.262323073774029, 1.00211681802045};
    private static final double[] LONGLEY = {
        -3482258.63459582,
        15.0618722713733,
        -0.0358191792925910,
        -2.02022980381683,
        -1.03322686717359,
        -0.0511041056535807,
        1829.15146461355
    };

    @Test
    void fit_norris_givesTheCertifiedLine() throws IOException {
        certified("norris.tsv", NORRIS, 26.6173985294224, 1e-9);
    }

    @Test
    void fit_longley_givesTheCertifiedPlane() throws IOException {
        certified("longley.tsv", LONGLEY, 836424.055505915, 1e-6);
    }

    private static void certified(String file, double[] beta, double squares, double tolerance) throws IOException {
        double[][] data = read(file);
        double[] y = Arrays.stream(data).mapToDouble(r -> r[0]).toArray();
        double[][] x =
                Arrays.stream(data).map(r -> Arrays.copyOfRange(r, 1, r.length)).toArray(double[][]::new);
        double[] expected = Arrays.stream(x).mapToDouble(r -> at(beta, r)).toArray();
        LeastSquares.Fit fit = new LeastSquares(x).fit(y);
        double residual = 0;
        for (int i = 0; i < y.length; i++) {
            assertThat(fit.values[i]).isCloseTo(expected[i], within(tolerance));
            residual += (y[i] - fit.values[i]) * (y[i] - fit.values[i]);
        }
        assertThat(residual / squares).isCloseTo(1, within(1e-9));
    }

    private static double at(double[] beta, double[] row) {
        double value = beta[0];
        for (int c = 0; c < row.length; c++) {
            value += beta[c + 1] * row[c];
        }
        return value;
    }

    private static double[][] read(String file) throws IOException {
        try (InputStream in = Objects.requireNonNull(LeastSquaresTest.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> Arrays.stream(line.split("\t"))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
        }
    }

    /** Like Wampler's: y = 1 + x + x² + x³ on 0 to 20 without noise (derived). */
    @Test
    void fit_polynomialWithoutNoise_goesThroughEveryPoint() {
        double[][] rows = new double[21][];
        double[] y = new double[21];
        for (int i = 0; i < y.length; i++) {
            double x = i;
            rows[i] = new double[] {x, x * x, x * x * x};
            y[i] = 1 + x + x * x + x * x * x;
        }
        LeastSquares.Fit fit = new LeastSquares(rows).fit(y);
        for (int i = 0; i < y.length; i++) {
            assertThat(fit.values[i]).isCloseTo(y[i], within(1e-8));
        }
        assertThat(fit.significance).isZero();
    }

    /** A column twice is one direction: the fit is that of the column once (derived). */
    @Test
    void fit_columnTwice_isThatOfTheColumnOnce() throws IOException {
        double[][] data = read("norris.tsv");
        double[] y = Arrays.stream(data).mapToDouble(r -> r[0]).toArray();
        LeastSquares.Fit twice = new LeastSquares(Arrays.stream(data)
                        .map(r -> new double[] {r[1], r[1], 7})
                        .toArray(double[][]::new))
                .fit(y);
        LeastSquares.Fit once = new LeastSquares(
                        Arrays.stream(data).map(r -> new double[] {r[1]}).toArray(double[][]::new))
                .fit(y);
        assertThat(twice.values).containsExactly(once.values, within(1e-9));
        assertThat(twice.error(0)).isCloseTo(once.error(0), within(1e-12));
    }

    /** s·√(1/n + (x − x̄)²/Sxx) at x = 500 is 0.1514... (R 4.2, from the 95 % limits 500.488196472, 501.103975401). */
    @Test
    void error_norris_isThatOfTheMeanLine() throws IOException {
        double[][] data = read("norris.tsv");
        double[] y = Arrays.stream(data).mapToDouble(r -> r[0]).toArray();
        double[] x = Arrays.stream(data).mapToDouble(r -> r[1]).toArray();
        double mean = Arrays.stream(x).average().orElseThrow();
        double sxx = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
        LeastSquares.Fit fit = new LeastSquares(
                        Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new))
                .fit(y);
        double s2 = 26.6173985294224 / 34;
        for (int i = 0; i < x.length; i++) {
            double expected = Math.sqrt(s2 * (1.0 / 36 + (x[i] - mean) * (x[i] - mean) / sxx));
            assertThat(fit.error(i)).isCloseTo(expected, within(1e-9));
        }
    }

    @Test
    void fit_responseThatNeverChanges_isNotSignificant() {
        double[][] rows = new double[50][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {i};
        }
        LeastSquares.Fit fit = new LeastSquares(rows).fit(new double[50]);
        assertThat(fit.significance).isEqualTo(1);
        assertThat(fit.values).containsOnly(0);
    }

    /** The F test of noise on noise is uniform: as often below 5 % as four standard errors allow. */
    @Test
    void significance_noiseOnNoise_isUniform() {
        int trials = 2000;
        int below = 0;
        long key = Draws.key(1, "noise");
        for (int t = 0; t < trials; t++) {
            long state = Draws.future(key, t);
            double[][] rows = new double[40][2];
            double[] y = new double[40];
            for (int i = 0; i < y.length; i++) {
                rows[i][0] = Draws.uniform(state, 3L * i);
                rows[i][1] = Draws.uniform(state, 3L * i + 1);
                y[i] = Draws.uniform(state, 3L * i + 2);
            }
            below += new LeastSquares(rows).fit(y).significance < 0.05 ? 1 : 0;
        }
        assertThat((double) below / trials).isCloseTo(0.05, within(4 * Math.sqrt(0.05 * 0.95 / trials)));
    }
}
