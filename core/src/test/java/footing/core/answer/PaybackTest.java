package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import footing.core.plain.MachineDraft;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a start cost is paid back, and by the month; worked out by hand on lives that are fixed. */
class PaybackTest {
    /** 1,000 h; the carried set lasts 100 h and costs 60 a time, the dear one is 2 × 150 and lasts for ever. */
    private final MachineDraft draft = new MachineDraft();

    PaybackTest() {
        draft.entry("plain", When.NOW, "short", "caster");
        draft.entry("dear", When.NOW, "long", "caster");
        draft.assembly("short").life = Spread.of(100);
        draft.assembly("short").renewalPrice = 30;
        draft.assembly("long").price = 150;
    }

    private EntryAnswer dear() {
        return new Entries(new MachineFutures(draft.build(), 1).runAll(10), 0.8)
                .answer()
                .entries()
                .get(1);
    }

    /** Renewals at 100, 200 … 900: 60 each; the fifth, at 500 h, brings 300. */
    @Test
    void paybackHours_steadySavings_isTheRenewalThatCoversTheStart() {
        assertThat(dear().paybackHours()).isEqualTo(500);
        assertThat(dear().saving().mean()).isCloseTo(240, within(1e-9));
    }

    @Test
    void paybackHours_tradeValue_doesNotCount() {
        draft.assembly("long").tradeCredit = 1;
        assertThat(dear().paybackHours()).isEqualTo(500);
        assertThat(dear().saving().mean()).isGreaterThan(500);
    }

    @Test
    void paybackHours_savingsTooSmall_isNull() {
        draft.assembly("long").price = 271;
        draft.assembly("long").tradeCredit = 1;
        assertThat(dear().paybackHours()).isNull();
        assertThat(dear().saving().mean()).isPositive();
    }

    @Test
    void paybackHours_neverBehind_isZero() {
        draft.assembly("long").price = 0;
        assertThat(dear().paybackHours()).isZero();
    }

    /** Ahead at 500 h, behind again when the long set is renewed at 600 h for 2 × 100, ahead for good at 900 h. */
    @Test
    void paybackHours_aheadThenBehindAgain_isTheLastTime() {
        draft.assembly("long").life = Spread.of(600);
        draft.assembly("long").renewalPrice = 100;
        assertThat(dear().paybackHours()).isEqualTo(900);
    }

    @Test
    void paybackHours_carried_isNull() {
        MachineAnswer answer = new Entries(new MachineFutures(draft.build(), 1).runAll(10), 0.8).answer();
        assertThat(answer.carried().paybackHours()).isNull();
    }

    /** Annuity: 270 over 36 months at 6 %/12, after 10 % of 300 down: 270·0.005/(1 − 1.005⁻³⁶) = 8.2139. */
    @Test
    void monthly_loanOfTheCase_isItsAnnuity() {
        draft.loan = Optional.of(new Terms.Loan(0.06, 36, 0.1));
        EntryAnswer.Monthly monthly = Objects.requireNonNull(dear().monthly());
        assertThat(monthly.months()).isEqualTo(36);
        assertThat(monthly.payment()).isCloseTo(270 * 0.005 / (1 - Math.pow(1.005, -36)), within(1e-9));
    }

    /** No loan: 48 months at 1.08^(1/12) − 1. */
    @Test
    void monthly_noLoan_isFourYearsAtWhatMoneyIsWorth() {
        draft.discountRate = 0.08;
        EntryAnswer.Monthly monthly = Objects.requireNonNull(dear().monthly());
        double rate = Math.pow(1.08, 1 / 12.0) - 1;
        assertThat(monthly.months()).isEqualTo(48);
        assertThat(monthly.payment()).isCloseTo(300 * rate / (1 - Math.pow(1 + rate, -48)), within(1e-9));
    }

    /** 540 of renewals avoided in two years of 365 days (500 h each, to the end of 2028 less its leap day's hours). */
    @Test
    void monthly_tradeBeforeTheLoanEnds_sharesWhatIsAvoidedOverTheTimeToIt() {
        EntryAnswer.Monthly monthly = Objects.requireNonNull(dear().monthly());
        assertThat(monthly.avoided()).isCloseTo(540 / (12 * 731 / 365.0), within(1e-9));
        draft.asOf = draft.asOf.plusYears(2);
        assertThat(dear().monthly()).extracting(EntryAnswer.Monthly::avoided).isEqualTo(540 / 24.0);
    }

    /**
     * 300 over 48 months, traded after 24 payments: half of them and, as a loan's balance is the present value of the
     * payments left at its rate (derived), what is still owed.
     */
    @Test
    void monthly_tradeBeforeTheLoanEnds_paysOffTheRest() {
        draft.discountRate = 0.08;
        EntryAnswer.Monthly monthly = Objects.requireNonNull(dear().monthly());
        double rate = Math.pow(1.08, 1 / 12.0) - 1;
        double owed = monthly.payment() * (1 - Math.pow(1 + rate, -24)) / rate;
        assertThat(monthly.isTradedFirst()).isTrue();
        assertThat(monthly.paid()).isCloseTo(24 * monthly.payment() + owed, within(1e-9));
        assertThat(monthly.avoidedInAll()).isCloseTo(540, within(1e-9));
    }

    @Test
    void monthly_nothingToPay_isNull() {
        draft.assembly("long").price = 0;
        assertThat(dear().monthly()).isNull();
    }
}
