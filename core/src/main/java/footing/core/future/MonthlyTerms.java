package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import footing.core.money.Loan;
import java.time.temporal.ChronoUnit;
import java.util.stream.IntStream;

/**
 * The loan test: the case's loan, or 48 months at what money is worth, and how long its payments are compared with what
 * is avoided.
 *
 * @param months the earlier of the loan's end and the trade, in months
 * @param untilHour hours run by then
 * @param due payments that fall due by then
 */
record MonthlyTerms(Loan loan, double months, double untilHour, int due) {
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
        double tradeDay = calendar.daysAt(m.hoursLeft());
        int due = (int) IntStream.rangeClosed(1, loan.months())
                .filter(k -> ChronoUnit.DAYS.between(m.asOf(), loan.paymentDate(m.asOf(), k)) <= tradeDay)
                .count();
        return new MonthlyTerms(loan, Math.min(loan.months(), untilTrade), hour, due);
    }

    /** All that is paid of a cost by then: down, the payments due, and off what the loan still stands at. */
    double paid(double cost) {
        return loan.downPayment(cost) + due * loan.payment(cost) + loan.balance(cost, due);
    }
}
