package footing.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResampledTest {
    /** Invented pulls in kN, A less B. */
    private static final double[] PULLS = {0.03, -0.02, 0.04, 0.01, 0.03, 0.02, -0.02, 0.04};

    /** Derived: the 27 equally likely draws of three of 1, 2 and 4, counted by hand. */
    @ParameterizedTest
    @CsvSource({"3, 1", "4, 3", "5, 3", "6, 4", "7, 6", "8, 3", "9, 3", "10, 3", "12, 1"})
    void chance_threeOfOneTwoFour_isTheCountOfTwentySeven(int sum, int draws) {
        Resampled drawn = Resampled.of(new double[] {1, 2, 4}, 1);

        assertThat(drawn.chance(sum / 3.0, sum / 3.0)).isCloseTo(draws / 27.0, within(1e-12));
    }

    /** Derived: the divisor n, not n − 1, under the root; 0.008089 kN for these pulls. */
    @Test
    void error_pulls_isTheirSpreadOverTheRootOfTheirNumber() {
        double error = Resampled.of(PULLS, 1).error();

        assertThat(error).isCloseTo(0.008089, within(5e-7));
        assertThat(error).isCloseTo(Math.sqrt(StatUtils.populationVariance(PULLS) / 8), within(1e-12));
    }

    /** Printed with 10,000 draws as 0.00000 to 0.03125 (recomputed), against −0.0042 to 0.0367 by t. */
    @Test
    void interval_eightPulls_isNarrowerThanThatOfT() {
        Interval drawn = Resampled.of(PULLS, 1).interval(0.95);
        Interval byT = PairedTest.of(PULLS).interval(0.95);

        assertThat(drawn.low()).isCloseTo(0, within(1e-9));
        assertThat(drawn.high()).isCloseTo(0.03125, within(1e-9));
        assertThat(byT.low()).isLessThan(drawn.low());
        assertThat(byT.high()).isGreaterThan(drawn.high());
    }

    @Test
    void error_manyPairs_isThatOfTheExactCountWithinFourStandardErrors() {
        double[] many = IntStream.range(0, 20).mapToDouble(i -> Math.sin(i)).toArray();
        double exact = Math.sqrt(StatUtils.populationVariance(many) / 20);

        // The standard error of a standard deviation from 10,000 draws is its own over the root of twice as many.
        assertThat(Resampled.of(many, 3).error()).isCloseTo(exact, within(4 * exact / Math.sqrt(20_000)));
        assertThat(Resampled.of(many, 3).error())
                .isEqualTo(Resampled.of(many, 3).error());
    }

    @Test
    void of_nothing_isRefused() {
        assertThatThrownBy(() -> Resampled.of(new double[0], 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
