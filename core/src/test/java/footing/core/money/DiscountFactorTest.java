package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class DiscountFactorTest {

    @Test
    void uniform_anyRate_isTheSumOfSingles() {
        for (double rate : new double[] {-0.3, -1e-9, 0, 1e-12, 0.03, 0.5}) {
            double sum = 0;
            for (int n = 1; n <= 40; n++) {
                sum += DiscountFactor.single(rate, n);
                assertThat(DiscountFactor.uniform(rate, n)).as("rate %s", rate).isCloseTo(sum, withinPercentage(1e-11));
            }
        }
    }

    @Test
    void escalating_anyGrowth_isTheSumOfGrownAndDiscounted() {
        for (double growth : new double[] {-0.1, 0, 0.03, 0.03 + 1e-13, 0.08}) {
            double sum = 0;
            for (int n = 1; n <= 20; n++) {
                sum += Math.pow(1 + growth, n) / Math.pow(1.03, n);
                assertThat(DiscountFactor.escalating(growth, 0.03, n)).isCloseTo(sum, withinPercentage(1e-11));
            }
        }
    }

    /** Series UPV = n - n(n + 1)/2 · d + O(d²); the textbook form has lost six digits at this rate. */
    @Test
    void uniform_rateNearZero_keepsItsDigits() {
        assertThat(DiscountFactor.uniform(1e-10, 360)).isCloseTo(360 - 180 * 361 * 1e-10, within(1e-12));
    }

    @Test
    void capitalRecovery_lessSalvage_equalsCostLessSinkingFund() {
        double recovery = DiscountFactor.capitalRecovery(0.05, 15);
        double sinkingFund = recovery / Math.pow(1.05, 15);

        assertThat((93_500 - 25_300) * recovery + 25_300 * 0.05)
                .isCloseTo(93_500 * recovery - 25_300 * sinkingFund, within(1e-9));
    }

    @Test
    void single_longer_isWorthLessAtAPositiveRateAndMoreAtANegative() {
        assertThat(DiscountFactor.single(0.03, 8)).isLessThan(DiscountFactor.single(0.03, 7));
        assertThat(DiscountFactor.single(-0.03, 8)).isGreaterThan(DiscountFactor.single(-0.03, 7));
    }

    @Test
    void factors_rateOrPeriodsOutOfRange_areRefused() {
        for (double rate : new double[] {-1, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> DiscountFactor.uniform(rate, 3))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("rate is " + rate)
                    .hasMessageContaining("\n");
        }
        assertThatThrownBy(() -> DiscountFactor.single(0.1, Double.NaN)).hasMessageContaining("periods is NaN");
        assertThatThrownBy(() -> DiscountFactor.single(0.1, -1)).hasMessageContaining("periods is -1.0");
        assertThatThrownBy(() -> DiscountFactor.capitalRecovery(0.1, 0)).hasMessageContaining("periods is 0.0");
    }
}
