package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RateOfReturnTest {

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(RateOfReturnTest.class, "rate.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        row.check(value(row));
    }

    private static double value(ReferenceValue row) {
        return switch (row.function()) {
            case "npv" -> PresentValue.firstFlowAfterOnePeriod(row.number(0), row.from(1));
            case "npvNow" -> PresentValue.firstFlowNow(row.number(0), row.from(1));
            case "xnpv" -> PresentValue.ofDatedFlows(row.number(0), flows(row, 1));
            case "irr" -> RateOfReturn.internal(row.from(0)).orElseThrow();
            case "xirr" -> RateOfReturn.internal(flows(row, 0)).orElseThrow();
            case "mirr" ->
                RateOfReturn.modified(row.number(0), row.number(1), row.from(2)).orElseThrow();
            case "effect" -> InterestRate.effective(row.number(0), row.whole(1));
            case "nominal" -> InterestRate.nominal(row.number(0), row.whole(1));
            case "real" -> InterestRate.real(row.number(0), row.number(1));
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    private static List<DatedFlow> flows(ReferenceValue row, int first) {
        return row.inputs().stream()
                .skip(first)
                .map(cell -> cell.split("@"))
                .map(parts -> new DatedFlow(LocalDate.parse(parts[1]), Double.parseDouble(parts[0])))
                .toList();
    }

    @Test
    void internal_datedFlowsOverALeapDay_countsThreeHundredSixtyFiveDays() {
        LocalDate start = LocalDate.of(1992, 1, 1);
        List<DatedFlow> leapYear = List.of(new DatedFlow(start, -100), new DatedFlow(LocalDate.of(1993, 1, 1), 110));

        assertThat(RateOfReturn.internal(leapYear).orElseThrow())
                .isCloseTo(Math.pow(1.1, 365 / 366.0) - 1, within(1e-14));
    }

    @Test
    void internal_signNeverChanges_isEmpty() {
        assertThat(RateOfReturn.internal(100, 20, 30)).isEmpty();
        assertThat(RateOfReturn.internal(-100, -20)).isEmpty();
        assertThat(RateOfReturn.internal(0, 0, 0)).isEmpty();
        assertThat(RateOfReturn.internal(new double[0])).isEmpty();
        assertThat(RateOfReturn.internal(List.of())).isEmpty();
    }

    /** 1 - 2x + 2x² with x = 1/(1 + rate) has no real root. */
    @Test
    void internal_signChangesTwiceWithoutRoot_isEmpty() {
        assertThat(RateOfReturn.internal(1, -2, 2)).isEmpty();
        assertThat(RateOfReturn.allInternal(1, -2, 2)).isEmpty();
    }

    /** Flows built from their rates: the product of (1 - (1 + rate) v) in v = 1/(1 + rate). */
    @Test
    void allInternal_threeRates_findsEach() {
        double[] rates = {-0.2, 0.1, 0.5};

        assertThat(RateOfReturn.allInternal(flowsWith(rates))).containsExactly(rates, within(1e-12));
        assertThat(RateOfReturn.internal(flowsWith(rates)).orElseThrow()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void allInternal_closeOrExtremeRates_findsEach() {
        double[] close = {0.1, 0.101};
        double[] extreme = {-0.999, 40};

        assertThat(RateOfReturn.allInternal(flowsWith(close))).containsExactly(close, within(1e-10));
        assertThat(RateOfReturn.allInternal(flowsWith(extreme))).containsExactly(extreme, within(1e-9));
    }

    @Test
    void allInternal_doubleRate_isFoundOnce() {
        assertThat(RateOfReturn.allInternal(100, -220, 121)).containsExactly(new double[] {0.1}, within(1e-6));
    }

    @Test
    void internal_longMonthlySeries_isTheRateThatMadeIt() {
        double[] flows = new double[481];
        Arrays.fill(flows, Annuity.payment(0.004, 480, -1, 0, PaymentTime.END));
        flows[0] = -1;

        assertThat(RateOfReturn.internal(flows).orElseThrow()).isCloseTo(0.004, within(1e-14));
    }

    @Test
    void internal_randomFlows_makePresentValueZero() {
        Sampler sampler = new Sampler(4201);
        for (int run = 0; run < 500; run++) {
            double[] flows = sampler.numbers(2 + sampler.below(12), -1_000, 1_000);
            for (double rate : RateOfReturn.allInternal(flows)) {
                double size = PresentValue.firstFlowNow(
                        rate, Arrays.stream(flows).map(Math::abs).toArray());
                assertThat(PresentValue.firstFlowNow(rate, flows) / size)
                        .as("%s, run %d", sampler, run)
                        .isCloseTo(0, within(1e-12));
            }
            // The value's sign at both ends tells whether the number of rates is odd.
            boolean odd = flows[0] > 0 != flows[flows.length - 1] > 0;
            assertThat(RateOfReturn.allInternal(flows).length % 2 == 1)
                    .as("%s, run %d", sampler, run)
                    .isEqualTo(odd);
        }
    }

    @Test
    void internal_datedFlowsInAnyOrder_isTheSame() {
        List<DatedFlow> flows = List.of(
                new DatedFlow(LocalDate.of(2027, 3, 1), -1_000),
                new DatedFlow(LocalDate.of(2027, 9, 1), 700),
                new DatedFlow(LocalDate.of(2028, 5, 1), 150));
        List<DatedFlow> shuffled = List.of(flows.get(2), flows.get(0), flows.get(1));

        double rate = RateOfReturn.internal(flows).orElseThrow();
        assertThat(rate).isNegative();
        assertThat(RateOfReturn.internal(shuffled)).hasValue(rate);
        assertThat(PresentValue.ofDatedFlows(rate, flows)).isCloseTo(0, within(1e-9));
    }

    @Test
    void modified_nothingGoesOut_isEmpty() {
        assertThat(RateOfReturn.modified(0.1, 0.1, 5, 6)).isEmpty();
        assertThat(RateOfReturn.modified(0.1, 0.1)).isEmpty();
        assertThat(RateOfReturn.modified(0.1, 0.1, -5)).isEmpty();
        assertThat(RateOfReturn.modified(0.1, 0.1, -5, 0)).hasValue(-1);
    }

    @Test
    void modified_bothRatesInternal_isTheInternalRate() {
        double[] flows = {-100, 39, 59, 55, 20};
        double internal = RateOfReturn.internal(flows).orElseThrow();

        assertThat(RateOfReturn.modified(internal, internal, flows).orElseThrow())
                .isCloseTo(internal, within(1e-13));
    }

    @Test
    void nominal_madeEffectiveAgain_returns() {
        assertThat(InterestRate.effective(InterestRate.nominal(0.08, 12), 12)).isCloseTo(0.08, within(1e-15));
        assertThat(InterestRate.effective(1e-13, 12)).isCloseTo(1e-13, within(1e-25));
    }

    @Test
    void flows_notFinite_areRefused() {
        assertThatThrownBy(() -> RateOfReturn.internal(-1, Double.NaN)).hasMessageContaining("flow[1] is NaN");
        assertThatThrownBy(() -> PresentValue.firstFlowNow(Double.NaN, 1)).hasMessageContaining("rate is NaN");
        assertThatThrownBy(() -> new DatedFlow(LocalDate.EPOCH, Double.POSITIVE_INFINITY))
                .hasMessageContaining("amount is Infinity");
        assertThatThrownBy(() -> RateOfReturn.modified(-1, 0.1, -5, 6)).hasMessageContaining("rate is -1.0");
    }

    private static double[] flowsWith(double... rates) {
        double[] flows = {1};
        for (double rate : rates) {
            double[] next = new double[flows.length + 1];
            for (int k = 0; k < flows.length; k++) {
                next[k] += flows[k];
                next[k + 1] -= flows[k] * (1 + rate);
            }
            flows = next;
        }
        return flows;
    }
}
