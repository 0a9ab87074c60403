package footing.core.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleTest {
    private static final double[] TEN = {16, 1, 46, 2, 11, 4, 37, 7, 29, 22};

    /** R 4.2 quantile(c(1,2,4,7,11,16,22,29,37,46), p, type = 7); the 90th also by Hipparchus 4.0.2, R_7. */
    @Test
    void percentiles_tenValues_areThoseOfTypeSeven() {
        assertThat(new Sample(TEN).percentiles(0.1, 0.5, 0.9))
                .containsExactly(new double[] {1.9, 13.5, 37.9}, within(1e-12));
    }

    @Test
    void percentiles_valuesGiven_leavesThemAsTheyWere() {
        double[] given = TEN.clone();
        new Sample(given).percentiles(0.1, 0.9);
        assertThat(given).containsExactly(TEN);
    }

    /** Every shape a long sample can have: skewed, sorted, with ties, of two values, of one value, with one far away. */
    @ParameterizedTest
    @CsvSource({"skewed", "rising", "falling", "few", "two", "same", "far", "sawtooth"})
    void percentiles_longSample_areThoseOfTheSortedValues(String shape) {
        for (int n : new int[] {1999, 2000, 2001, 20_000}) {
            double[] values = new double[n];
            for (int i = 0; i < n; i++) {
                values[i] = value(shape, i, n);
            }
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double[] found = new Sample(values).percentiles(0.9, 0.001, 0.1, 0.5, 0.9999);
            double[] shares = {0.9, 0.001, 0.1, 0.5, 0.9999};
            for (int s = 0; s < shares.length; s++) {
                double h = (n - 1) * shares[s];
                int below = (int) h;
                double expected = sorted[below] + (h - below) * (sorted[below + 1] - sorted[below]);
                assertThat(found[s]).as(shape + " " + n + " " + shares[s]).isEqualTo(expected);
            }
        }
    }

    private static double value(String shape, int i, int n) {
        double u = Draws.uniform(Draws.future(7, i), 0);
        return switch (shape) {
            case "skewed" -> Math.exp(3 * u * u) - 5;
            case "rising" -> i;
            case "falling" -> -i;
            case "few" -> Math.floor(10 * u);
            case "two" -> u < 0.5 ? 0 : 1;
            case "same" -> 4;
            case "far" -> i == n / 2 ? 1e300 : u;
            default -> i % (n / 512);
        };
    }

    @Test
    void percentiles_oneValue_areThatValue() {
        assertThat(new Sample(new double[] {5}).percentiles(0.1, 0.5, 0.9)).containsExactly(5, 5, 5);
        assertThat(new Sample(new double[] {5}).standardError()).isZero();
    }

    /** Derived by hand: of 2, 4, 4, 4, 5, 5, 7, 9 the mean is 5, the squares about it sum to 32; √(32/7/8). */
    @Test
    void standardError_eightValues_dividesByOneLess() {
        Sample sample = new Sample(new double[] {2, 4, 4, 4, 5, 5, 7, 9});
        assertThat(sample.mean()).isEqualTo(5);
        assertThat(sample.standardError()).isCloseTo(Math.sqrt(32 / 7.0 / 8.0), within(1e-15));
    }

    /** NumAcc4-like: a mean far larger than the spread. Values 1e7 + 0.2, then pairs of ±0.1 about it: s = 0.1. */
    @Test
    void standardError_largeMean_keepsItsDigits() {
        double[] values = new double[1001];
        for (int i = 0; i < values.length; i++) {
            values[i] = i == 0 ? 10_000_000.2 : i % 2 == 1 ? 10_000_000.1 : 10_000_000.3;
        }
        Sample sample = new Sample(values);
        assertThat(sample.mean()).isCloseTo(10_000_000.2, within(1e-6));
        assertThat(sample.standardError() * Math.sqrt(1001)).isCloseTo(0.1, within(1e-8));
    }

    @Test
    void sample_noValue_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Sample(new double[0]));
    }

    @Test
    void shareAboveZero_zeroItself_isNotAbove() {
        assertThat(Sample.shareAboveZero(new double[] {-1, 0, -0.0, 1e-300, 2})).isEqualTo(0.4);
    }

    /**
     * The interval between two order statistics holds the true quantile as often as the binomial says (ranks and
     * coverage: derived; 40 and 61 of 100 are the textbook's, from memory).
     */
    @ParameterizedTest
    @CsvSource({"20, 0.5, 6, 15, 0.958610535", "100, 0.5, 40, 61, 0.964799800", "100, 0.9, 84, 96, 0.955690107"})
    void uniform_orderStatistics_coverTheQuantileAsTheBinomialSays(int n, double p, int l, int u, double coverage) {
        int trials = 20_000;
        int held = 0;
        long key = Draws.key(1, "coverage", "n" + n);
        for (int t = 0; t < trials; t++) {
            long state = Draws.future(key, t);
            double[] x = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = Draws.uniform(state, i);
            }
            Arrays.sort(x);
            held += x[l - 1] < p && p < x[u - 1] ? 1 : 0;
        }
        double error = Math.sqrt(coverage * (1 - coverage) / trials);
        assertThat((double) held / trials).isCloseTo(coverage, within(4 * error));
    }
}
