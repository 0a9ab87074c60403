package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LifeCycleTest {

    private static final double[] SAVINGS = {2525, 2525, 2525, 3840, 3840, 3840};

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(LifeCycleTest.class, "life-cycle.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        row.check(value(row));
    }

    private static double value(ReferenceValue row) {
        return switch (row.function()) {
            case "single" -> DiscountFactor.single(row.number(0), row.number(1));
            case "uniform" -> DiscountFactor.uniform(row.number(0), row.number(1));
            case "escalating" -> DiscountFactor.escalating(row.number(0), row.number(1), row.number(2));
            case "npv" -> PresentValue.firstFlowAfterOnePeriod(row.number(0), row.from(1));
            case "irr" -> RateOfReturn.internal(row.from(0)).orElseThrow();
            case "netSaving" -> LifeCycle.netSaving(row.number(0), row.number(1), row.from(2));
            case "sir" -> LifeCycle.savingToInvestmentRatio(row.number(0), row.number(1), row.from(2));
            case "airr" -> LifeCycle.adjustedRateOfReturn(row.number(0), row.number(1), row.from(2));
            case "cumulative" -> LifeCycle.cumulativeValues(row.number(1), row.number(2), row.from(3))[row.whole(0)];
            case "simplePaybackYear" ->
                LifeCycle.simplePayback(row.number(0), row.from(1))
                        .orElseThrow()
                        .year();
            case "simplePaybackYears" ->
                LifeCycle.simplePayback(row.number(0), row.from(1))
                        .orElseThrow()
                        .years();
            case "discountedPaybackYear" ->
                LifeCycle.discountedPayback(row.number(0), row.number(1), row.from(2))
                        .orElseThrow()
                        .year();
            case "discountedPaybackYears" ->
                LifeCycle.discountedPayback(row.number(0), row.number(1), row.from(2))
                        .orElseThrow()
                        .years();
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    /**
     * NIST Handbook 135 (1995), Table 5-2: the printed total needs factors rounded as printed (total transcribed, factors
     * from memory); exact ones give 12 less, so nothing is rounded before display.
     */
    @Test
    void presentValues_roundedFactors_giveThePrintedTotalAndExactOnesDoNot() {
        double printed = 103_000 + 12_000 * 0.701 - 3_500 * 0.554 + 20_000 * 15.13 + 7_000 * 14.88;
        double electricity = 302_600;
        double exact = 103_000
                + 12_000 * DiscountFactor.single(0.03, 12)
                - 3_500 * DiscountFactor.single(0.03, 20)
                + electricity
                + 7_000 * DiscountFactor.uniform(0.03, 20);

        assertThat(printed).isCloseTo(516_233, within(0.5));
        assertThat(exact).isCloseTo(516_221, within(0.5));
    }

    /** OMB Circular A-94 (1992), Appendix B (from memory): rows rounded to cents add up to the same net value. */
    @Test
    void presentValues_rowsRoundedToCents_addUpToThePrintedNet() {
        double[] net = {-10, -20, -25, -20, 10, 30, 35, 35, 35, 20};
        double rounded = IntStream.range(0, net.length)
                .mapToDouble(i -> Math.rint(100 * net[i] * DiscountFactor.single(0.07, i + 1)) / 100)
                .sum();

        assertThat(rounded).isCloseTo(36.01, within(0.011));
        assertThat(PresentValue.firstFlowAfterOnePeriod(0.07, net)).isCloseTo(36.0114, within(5e-5));
    }

    @Test
    void adjustedRateOfReturn_terminalValueForm_agreesWithTheRatioForm() {
        double terminal = IntStream.range(0, 6)
                .mapToDouble(i -> SAVINGS[i] * Math.pow(1.15, 5 - i))
                .sum();

        assertThat(LifeCycle.adjustedRateOfReturn(0.15, 10_000, SAVINGS))
                .isCloseTo(Math.pow(terminal / 10_000, 1 / 6.0) - 1, within(1e-12));
    }

    @Test
    void adjustedRateOfReturn_rateIsInternalRate_equalsIt() {
        double internal = RateOfReturn.internal(
                        -10_000, SAVINGS[0], SAVINGS[1], SAVINGS[2], SAVINGS[3], SAVINGS[4], SAVINGS[5])
                .orElseThrow();

        assertThat(LifeCycle.adjustedRateOfReturn(internal, 10_000, SAVINGS)).isCloseTo(internal, within(1e-12));
        assertThat(LifeCycle.netSaving(internal, 10_000, SAVINGS)).isCloseTo(0, within(1e-8));
    }

    @Test
    void netSaving_savingsAndOutlayScaled_scalesAlike() {
        double[] doubled = Arrays.stream(SAVINGS).map(s -> 2 * s).toArray();

        assertThat(LifeCycle.netSaving(0.08, 20_000, doubled))
                .isCloseTo(2 * LifeCycle.netSaving(0.08, 10_000, SAVINGS), within(1e-9));
    }

    @Test
    void cumulativeValues_lastYear_isTheNetSaving() {
        assertThat(LifeCycle.cumulativeValues(0.15, 10_000, SAVINGS)[6])
                .isCloseTo(LifeCycle.netSaving(0.15, 10_000, SAVINGS), within(1e-9));
    }

    @Test
    void payback_neverReached_isEmpty() {
        assertThat(LifeCycle.discountedPayback(0.25, 10_000, SAVINGS)).isEmpty();
        assertThat(LifeCycle.simplePayback(10, 4, 4)).isEmpty();
    }

    @Test
    void payback_lostAgainLater_countsOnlyFromWhereItStays() {
        LifeCycle.Payback payback = LifeCycle.simplePayback(10, 12, -4, 4).orElseThrow();

        assertThat(payback.year()).isEqualTo(3);
        assertThat(payback.years()).isCloseTo(2.5, within(1e-12));
    }

    @Test
    void payback_nothingSpent_isAtOnce() {
        assertThat(LifeCycle.simplePayback(0, 1).orElseThrow()).isEqualTo(new LifeCycle.Payback(0, 0));
    }

    @Test
    void ratio_outlayNotPositive_isRefused() {
        for (double outlay : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> LifeCycle.savingToInvestmentRatio(0.1, outlay, 1))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("outlay is " + outlay);
        }
    }
}
