package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import footing.core.money.Loan;
import java.time.temporal.ChronoUnit;

/**
 * The loan test: the case's loan, or 48 months at what money is worth, and how long its payments are compared with what
 * is avoided.
 *
 * @param months the earlier of the loan's end and the trade, in months
 * @param untilHour hours run by then
 */
record MonthlyTerms(Loan loan, double months, double untilHour) {
    private static final int USUAL_MONTHS = 48;
    private static final int MONTHS_PER_YEAR = 12;

    static MonthlyTerms of(ResolvedMachine m, HourCalendar calendar) {
        Loan loan = m.terms()
                .loan()
                .map(l -> new Loan(l.rate(), l.months(), l.down()))
                .orElseGet(() -> Loan.atEffectiveRate(m.terms().discountRate(), USUAL_MONTHS));
        double untilTrade = MONTHS_PER_YEAR * calendar.yearsAt(m.hoursLeft());
        double lastPayment = ChronoUnit.DAYS.between(m.asOf(), loan.paymentDate(m.asOf(), loan.months()));
        double hour = Math.min(calendar.hourBy(lastPayment), m.hoursLeft());
        return new MonthlyTerms(loan, Math.min(loan.months(), untilTrade), hour);
    }
}
