package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Loan, tax and what is summed up, by hand: 1,000 h in 2027 and 2028; dear costs 1,200 at the start, 40 of it shop. */
class PlainMoneyTest {
    private final MachineDraft draft = new MachineDraft();
    private final MachineDraft.AssemblyDraft air = draft.assembly("air");
    private final MachineDraft.AssemblyDraft dear = draft.assembly("dear");
    private Entry entry = draft.entry("on-air", When.NOW, "air", "caster");

    @BeforeEach
    void dearPackage() {
        air.life = Spread.of(240);
        air.renewalPrice = 200;
        dear.kind = Kind.SOLID;
        dear.price = 580;
        dear.changeHours = 1;
        entry = draft.entry("dear", When.NOW, "dear", "caster");
    }

    private PlainFuture future() {
        return PlainModel.future(draft.build(), entry, 1, 0);
    }

    private PlainSummary summary() {
        return new PlainSummary(draft.build(), entry, 1, 3);
    }

    private void loan(double rate, int months, double down) {
        draft.loan = Optional.of(new Terms.Loan(rate, months, down));
        draft.loanApplies = true;
    }

    private void tax(double rate, Double... schedule) {
        draft.tax = Optional.of(new Terms.Tax(rate, List.of(schedule)));
    }

    private static double nominal(PlainFuture future, PlainPart part) {
        return future.flows().stream()
                .filter(f -> f.part() == part)
                .mapToDouble(PlainFuture.Flow::nominal)
                .sum();
    }

    @Test
    void purchase_loanWithoutInterest_levelPayments() {
        // 25 % of 1,200 at once, 900/12 = 75 on the first of each month, the last on 2028-01-01 = day 365
        loan(0, 12, 0.25);
        List<PlainFuture.Flow> paid = future().flows().stream()
                .filter(f -> f.part() == PlainPart.PURCHASE && f.nominal() != 0)
                .toList();
        assertThat(paid).hasSize(13);
        assertThat(paid.get(0).nominal()).isEqualTo(300);
        assertThat(paid.get(1).nominal()).isEqualTo(75);
        assertThat(paid.get(1).days()).isEqualTo(31);
        assertThat(paid.get(12).days()).isEqualTo(365);
        assertThat(summary().yearly(2027, PlainPart.PURCHASE)).isCloseTo(300 + 11 * 75, within(1e-9));
        assertThat(summary().yearly(2028, PlainPart.PURCHASE)).isCloseTo(75, within(1e-9));
    }

    @Test
    void purchase_tradedBeforeTheLoanEnds_balancePaidOff() {
        // 250 h: day 182.5, so payments up to 2027-07-01 (day 181): six.
        // payment 1,200·0.01/(1 − 1.01^−12) = 106.61854641; balance after six 106.61854641·(1 − 1.01^−6)/0.01
        // = 617.905; discounted at 10 % a year by days/365
        loan(0.12, 12, 0);
        draft.hoursLeft = 250;
        draft.discountRate = 0.1;
        double payment = 106.61854641;
        double expected = payment * (1 - Math.pow(1.01, -6)) / 0.01 * Math.pow(1.1, -0.5);
        for (int day : new int[] {31, 59, 90, 120, 151, 181}) {
            expected += payment * Math.pow(1.1, -day / 365.0);
        }
        assertThat(future().part(PlainPart.PURCHASE)).isCloseTo(expected, within(1e-5));
    }

    @Test
    void purchase_monthEnd_dayIsClamped() {
        draft.asOf = LocalDate.of(2027, 1, 31);
        loan(0, 12, 0);
        // 02-28 is day 28, 03-31 day 59, 04-30 day 89
        assertThat(future().flows().stream()
                        .filter(f -> f.nominal() == 100)
                        .limit(3)
                        .map(PlainFuture.Flow::days))
                .containsExactly(28.0, 59.0, 89.0);
    }

    @Test
    void tax_schedule_relievesAtEachYearEndAndTheRestAtTheTrade() {
        // shop 40 at once, 1,160 by 50 %, 30 %, 20 %: years 1 and 2 by 12-31, the trade is the midnight after
        // purchase 1,200 − 0.3·(40 + 580 + 348) = 909.60
        // trade: flow 2·0.5·580·(1 − 1,000/1e6) = 579.42; tax 0.3·(579.42 − 232) = 104.226
        tax(0.3, 0.5, 0.3, 0.2);
        dear.tradeCredit = 0.5;
        assertThat(future().part(PlainPart.PURCHASE)).isCloseTo(909.6, within(1e-9));
        assertThat(future().part(PlainPart.TRADE_IN)).isCloseTo(579.42 - 104.226, within(1e-9));
        assertThat(summary().yearly(2027, PlainPart.PURCHASE)).isCloseTo(1200 - 12 - 174, within(1e-9));
        // traded on day 363.54 of 2028, nothing is deducted for that year: not deducted 348 + 232
        draft.hoursLeft = 998;
        assertThat(future().part(PlainPart.PURCHASE)).isCloseTo(1200 - 12 - 174, within(1e-9));
        double flow = 580 * (1 - 998 / 1e6);
        assertThat(future().part(PlainPart.TRADE_IN)).isCloseTo(flow - 0.3 * (flow - 580), within(1e-9));
    }

    @Test
    void tax_loanInterest_deductedAtEachPayment() {
        // interest in all 12·106.61854641 − 1,200 = 79.42255692; 1,200 + 70 % of it, less 0.3·1,200
        loan(0.12, 12, 0);
        tax(0.3, 1.0);
        assertThat(nominal(future(), PlainPart.PURCHASE)).isCloseTo(1200 + 0.7 * 79.42255692 - 360, within(1e-6));
    }

    @Test
    void tax_runningCosts_areLowered() {
        // air at 240, 480, 720, 960: 4·400; taxed 30 %; in 2027 the first two; upkeep 0.5 an hour
        tax(0.3, 1.0);
        air.check = 1;
        PlainFuture carried = PlainModel.future(draft.build(), draft.entries.get(0), 1, 0);
        assertThat(carried.part(PlainPart.RENEWALS)).isCloseTo(1120, within(1e-9));
        assertThat(carried.part(PlainPart.UPKEEP)).isCloseTo(350, within(1e-9));
        PlainSummary onAir = new PlainSummary(draft.build(), draft.entries.get(0), 1, 2);
        assertThat(onAir.yearly(2027, PlainPart.RENEWALS)).isCloseTo(560, within(1e-9));
        assertThat(onAir.paybackHours()).isEmpty();
    }

    @Test
    void paybackHours_savedRenewals_atTheOneThatCoversTheStart() {
        // −1,200, then 400 at 240, 480, 720, 960: back at 0 from 720 h on
        assertThat(summary().paybackHours()).hasValue(720);
        dear.changeHours = 2; // 1,240: at 960
        assertThat(summary().paybackHours()).hasValue(960);
        dear.changeHours = 12; // 1,640: never
        assertThat(summary().paybackHours()).isEmpty();
        dear.price = 0;
        dear.changeHours = 0; // free: at once
        assertThat(summary().paybackHours()).hasValue(0);
    }

    @Test
    void paybackHours_upkeep_countsUpToTheGridPoint() {
        // free sets; 1 h of check each 50 h at 25: 0.5 an hour saved; 1,200 − 900 by take-off = 300: at 600 h
        air.renewalPrice = 0;
        air.check = 1;
        air.price = 450;
        air.takeOff = 1;
        assertThat(PlainStart.of(draft.build(), entry).cost()).isEqualTo(300);
        assertThat(summary().paybackHours().orElseThrow()).isCloseTo(600, within(1.0));
        tax(0.2, 1.0); // 0.4 an hour saved, start cost before tax: at 750 h
        assertThat(summary().paybackHours().orElseThrow()).isCloseTo(750, within(1.0));
    }

    @Test
    void monthly_withoutLoan_fortyEightMonthsAtTheDiscountRate() {
        // no interest: 1,200/48 = 25; avoided 1,600 until the trade, day 731: 12·731/365 months
        PlainSummary.Monthly monthly = summary().monthly().orElseThrow();
        assertThat(monthly.months()).isEqualTo(48);
        assertThat(monthly.payment()).isCloseTo(25, within(1e-9));
        assertThat(monthly.avoided()).isCloseTo(1600 / (12 * 731 / 365.0), within(1e-9));
        draft.discountRate = 0.08; // 1.08^(1/12) − 1 = 0.643403 % a month
        double r = 0.00643403011;
        assertThat(summary().monthly().orElseThrow().payment())
                .isCloseTo(1200 * r / (1 - Math.pow(1 + r, -48)), within(1e-5));
    }

    @Test
    void monthly_shorterThanTheTrade_countsUntilItsEnd() {
        // 12 months end on 2028-01-01 = day 365: renewals at 240 and 480 h, 800; upkeep of 500 h, 0.5 each
        loan(0, 12, 0);
        draft.loanApplies = false; // the case's loan all the same
        air.check = 1;
        PlainSummary.Monthly monthly = summary().monthly().orElseThrow();
        assertThat(monthly.payment()).isCloseTo(100, within(1e-9));
        assertThat(monthly.avoided()).isCloseTo((800 + 250) / 12.0, within(1e-9));
        loan(0, 11, 0.1); // until 2027-12-01 = day 334: one renewal; 90 % of 1,200 in eleven
        monthly = summary().monthly().orElseThrow();
        assertThat(monthly.payment()).isCloseTo(1080 / 11.0, within(1e-9));
        assertThat(monthly.avoided()).isCloseTo((400 + 250 * 334 / 365.0) / 11, within(1e-9));
    }

    @Test
    void yearly_upkeep_followsTheHoursAndInflation() {
        // 500 h a year at 0.5; 2027 at 21 % inflation: 250·(1.21 − 1)/ln 1.21
        air.check = 1;
        draft.inflation = 0.21;
        PlainSummary onAir = new PlainSummary(draft.build(), draft.entries.get(0), 1, 1);
        double first = onAir.yearly(2027, PlainPart.UPKEEP);
        assertThat(first).isCloseTo(250 * 0.21 / Math.log(1.21), within(1e-9));
        assertThat(onAir.years()).containsExactly(2027, 2028);
    }
}
