package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LoanTest {

    private static final Loan LOAN = new Loan(0.0749, 48, 0.1);

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(LoanTest.class, "loan.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        row.check(value(row));
    }

    private static double value(ReferenceValue row) {
        return switch (row.function()) {
            case "pmt" -> amortization(row, 1).payment();
            case "ipmt" -> amortization(row, 2).interest(row.whole(1));
            case "ppmt" -> amortization(row, 2).principal(row.whole(1));
            case "cumprinc" -> withoutRest(row).cumulativePrincipal(row.whole(3), row.whole(4));
            case "cumipmt" -> withoutRest(row).cumulativeInterest(row.whole(3), row.whole(4));
            case "rate" ->
                Annuity.rate(row.whole(0), row.number(1), row.number(2), row.number(3), row.time(4))
                        .orElseThrow();
            case "nper" ->
                Annuity.periods(row.number(0), row.number(1), row.number(2), row.number(3), row.time(4))
                        .orElseThrow();
            case "fv" -> Annuity.futureValue(row.number(0), row.number(1), row.number(2), row.number(3), row.time(4));
            case "fvschedule" -> InterestRate.compounded(row.number(0), row.from(1));
            case "rri" -> InterestRate.growth(row.number(0), row.number(1), row.number(2));
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    /** The rate comes first; periods, PV, FV and time stand together after what else the function takes. */
    private static Amortization amortization(ReferenceValue row, int at) {
        return new Amortization(row.number(0), row.whole(at), row.number(at + 1), row.number(at + 2), row.time(at + 3));
    }

    private static Amortization withoutRest(ReferenceValue row) {
        return new Amortization(row.number(0), row.whole(1), row.number(2), 0, row.time(5));
    }

    @Test
    void schedule_paidMonthByMonth_matchesTheClosedForms() {
        for (double rate : new double[] {0, 1e-13, 1e-9, 0.0749, 0.24}) {
            Loan loan = new Loan(rate, 48, 0.1);
            double owed = 18_000;
            for (int k = 1; k <= 48; k++) {
                double interest = owed * rate / 12;
                assertThat(loan.interest(20_000, k)).isCloseTo(interest, within(1e-9));
                owed -= loan.payment(20_000) - interest;
                assertThat(loan.balance(20_000, k)).isCloseTo(owed, within(1e-8));
            }
            assertThat(loan.balance(20_000, 48)).isZero();
            assertThat(owed).isCloseTo(0, within(1e-8));
        }
    }

    @Test
    void payments_discountedAtTheLoansRate_areWorthTheCost() {
        double worth = LOAN.downPayment(20_000)
                + LOAN.payment(20_000) * DiscountFactor.uniform(LOAN.monthlyRate(), LOAN.months());

        assertThat(worth).isCloseTo(20_000, within(1e-8));
    }

    @Test
    void loan_generalAmortization_agreesWithOppositeSign() {
        Amortization general = new Amortization(LOAN.monthlyRate(), 48, LOAN.borrowed(20_000), 0, PaymentTime.END);

        for (int k = 1; k <= 48; k++) {
            assertThat(LOAN.interest(20_000, k)).isCloseTo(-general.interest(k), within(1e-9));
            assertThat(LOAN.principal(20_000, k)).isCloseTo(-general.principal(k), within(1e-9));
            assertThat(LOAN.balance(20_000, k)).isCloseTo(general.balance(k), within(1e-8));
        }
    }

    @Test
    void atEffectiveRate_twelveMonthsOfInterest_compoundToTheRate() {
        Loan loan = Loan.atEffectiveRate(0.08, 48);

        assertThat(Math.pow(1 + loan.monthlyRate(), 12)).isCloseTo(1.08, within(1e-14));
        assertThat(loan.downPayment(1_000)).isZero();
    }

    @Test
    void amounts_costNegated_areNegated() {
        assertThat(LOAN.payment(-500)).isEqualTo(-LOAN.payment(500));
        assertThat(LOAN.balance(-500, 7)).isEqualTo(-LOAN.balance(500, 7));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-01-31, 1, 2027-02-28",
        "2027-01-31, 2, 2027-03-31",
        "2027-01-31, 13, 2028-02-29",
        "2027-08-31, 1, 2027-09-30",
        "2027-03-15, 12, 2028-03-15",
        "2028-02-29, 12, 2029-02-28",
        "2028-02-29, 48, 2032-02-29",
        "2027-03-15, 0, 2027-03-15"
    })
    void paymentDate_monthTooShort_isItsLastDay(LocalDate start, int k, LocalDate expected) {
        assertThat(LOAN.paymentDate(start, k)).isEqualTo(expected);
    }

    @Test
    void loan_inputsOutOfRange_areRefusedByName() {
        assertThatThrownBy(() -> new Loan(Double.NaN, 48, 0)).hasMessageContaining("annualRate is NaN");
        assertThatThrownBy(() -> new Loan(-0.01, 48, 0)).hasMessageContaining("annualRate is -0.01");
        assertThatThrownBy(() -> new Loan(0.05, 0, 0)).hasMessageContaining("months");
        assertThatThrownBy(() -> new Loan(0.05, 48, 1.01)).hasMessageContaining("downShare is 1.01");
        assertThatThrownBy(() -> LOAN.interest(1, 49)).hasMessageContaining("payment number is 49");
        assertThatThrownBy(() -> LOAN.interest(1, 0)).hasMessageContaining("payment number is 0");
        assertThatThrownBy(() -> LOAN.balance(Double.NaN, 1)).hasMessageContaining("cost is NaN");
    }

    /** The textbook form loses half its digits here; the payment is PV/n · (1 + (n + 1)/2 · r + O(r²)). */
    @Test
    void payment_rateNearZero_keepsItsDigits() {
        double rate = 1e-11;

        assertThat(Annuity.payment(rate, 48, 12_000, 0, PaymentTime.END))
                .isCloseTo(-250 * (1 + 24.5 * rate), withinPercentage(1e-13));
    }

    @Test
    void amortization_bothPaymentTimes_splitThePaymentAndEndAtTheFutureValue() {
        for (PaymentTime time : PaymentTime.values()) {
            Amortization plan = new Amortization(0.01, 24, 5_000, -800, time);

            assertThat(plan.cumulativeInterest(1, 24) + plan.cumulativePrincipal(1, 24))
                    .isCloseTo(24 * plan.payment(), within(1e-9));
            assertThat(plan.balance(0)).isCloseTo(5_000, within(1e-9));
            assertThat(plan.balance(24)).isCloseTo(800, within(1e-9));
        }
    }

    @Test
    void cumulativePrincipal_paymentsAtTheEnd_isTheFallOfTheBalance() {
        Amortization plan = new Amortization(0.055 / 12, 36, 15_000, 0, PaymentTime.END);

        assertThat(-plan.cumulativePrincipal(10, 18)).isCloseTo(plan.balance(9) - plan.balance(18), within(1e-9));
        assertThatThrownBy(() -> plan.cumulativeInterest(5, 4)).hasMessageContaining("last payment is 4");
    }

    @Test
    void annuity_eachTermSolvedFor_givesTheOthersBack() {
        for (PaymentTime time : PaymentTime.values()) {
            double payment = Annuity.payment(0.007, 60, 9_000, -1_000, time);

            assertThat(Annuity.presentValue(0.007, 60, payment, -1_000, time)).isCloseTo(9_000, within(1e-9));
            assertThat(Annuity.futureValue(0.007, 60, payment, 9_000, time)).isCloseTo(-1_000, within(1e-8));
            assertThat(Annuity.periods(0.007, payment, 9_000, -1_000, time).orElseThrow())
                    .isCloseTo(60, within(1e-9));
            assertThat(Annuity.rate(60, payment, 9_000, -1_000, time).orElseThrow())
                    .isCloseTo(0.007, within(1e-13));
        }
    }

    @Test
    void periods_paymentBelowTheInterest_isEmpty() {
        assertThat(Annuity.periods(0.01, -50, 10_000, 0, PaymentTime.END)).isEmpty();
        assertThat(Annuity.periods(0, 0, 10_000, 0, PaymentTime.END)).isEmpty();
        assertThat(Annuity.periods(0, -50, 10_000, 0, PaymentTime.END)).hasValue(200);
    }

    @Test
    void rate_everythingReceived_isEmpty() {
        assertThat(Annuity.rate(12, 10, 100, 0, PaymentTime.END)).isEmpty();
    }
}
