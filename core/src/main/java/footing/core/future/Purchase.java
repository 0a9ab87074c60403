package footing.core.future;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Terms;
import footing.core.money.Loan;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What an entry costs at the start, and how that is paid and deducted. Nothing here is drawn.
 *
 * @param startCost money at asOf, today's prices, before tax
 * @param shopTime the part of it that is shop time
 * @param presentValue of paying it, less the tax it saves up to the trade
 * @param undeducted of the start cost at the trade, nominal
 * @param byYear nominal payments less tax saved, by calendar year
 */
record Purchase(
        double startCost, double shopTime, double presentValue, double undeducted, SortedMap<Integer, Double> byYear) {
    private static final double DAYS_PER_YEAR = 365;

    static Purchase of(ResolvedMachine m, ResolvedMachine.Entry entry, HourCalendar calendar) {
        double shop = 0;
        double goods = 0;
        boolean changed = false;
        if (entry.when() == footing.core.fleet.When.NOW) {
            for (Position p : Position.values()) {
                if (m.differs(entry, p)) {
                    ResolvedAssembly wanted = m.assembly(entry, p);
                    boolean treated = wanted.madeByTreating(m.assembly(m.carried(), p));
                    goods += goods(m, entry, p, treated);
                    shop += (treated ? wanted.treatHours() : m.isNew() ? 0 : wanted.changeHours())
                            * m.terms().shopRate();
                    changed |= !treated;
                }
            }
        }
        if (changed && !m.isNew()) {
            shop += m.relevel() * m.terms().shopRate();
        }
        if (m.isNew() && entry.upcharge().isPresent()) {
            goods = entry.upcharge().getAsDouble();
            shop = 0;
        }
        return new Paying(m, calendar).of(goods + shop, shop);
    }

    private static double goods(ResolvedMachine m, ResolvedMachine.Entry entry, Position p, boolean treated) {
        ResolvedAssembly wanted = m.assembly(entry, p);
        ResolvedAssembly carried = m.assembly(m.carried(), p);
        int count = m.count(p);
        if (treated) {
            return count * wanted.treatPrice();
        }
        double median = carried.life().likely() * m.groundWear();
        double unused = Math.max(0, 1 - m.worn(p) / median);
        double fetched = wanted.carryOn() > 0 ? 0 : count * carried.takeOff() * carried.price() * unused;
        return count * wanted.price() - fetched;
    }

    /** A start cost of one unit, some of it shop time. */
    static Purchase ofOne(ResolvedMachine m, HourCalendar calendar, double shopTime) {
        return new Paying(m, calendar).of(1, shopTime);
    }

    /** The present value of one unit of extra start cost that is not shop time, with what the tax gives back. */
    static double presentValueOfOne(ResolvedMachine m, HourCalendar calendar) {
        Paying paying = new Paying(m, calendar);
        Purchase one = paying.of(1, 0);
        double trade = paying.discount(calendar.daysAt(m.hoursLeft()));
        return one.presentValue - m.terms().taxRate() * one.undeducted * trade;
    }

    /** Pays a start cost at once or by the loan, and deducts it. */
    private static final class Paying {
        private final Terms terms;
        private final LocalDate asOf;
        private final double tradeDays;
        private final LocalDate tradeDate;
        private final SortedMap<Integer, Double> byYear = new TreeMap<>();
        private double presentValue;

        Paying(ResolvedMachine m, HourCalendar calendar) {
            terms = m.terms();
            asOf = m.asOf();
            tradeDays = calendar.daysAt(m.hoursLeft());
            tradeDate = calendar.date(calendar.day(m.hoursLeft()));
        }

        Purchase of(double startCost, double shopTime) {
            if (terms.loanApplies() && startCost != 0) {
                borrow(startCost);
            } else {
                pay(startCost, 0, asOf);
            }
            double undeducted = terms.tax()
                    .map(t -> deduct(t, startCost - shopTime, shopTime))
                    .orElse(0.0);
            return new Purchase(startCost, shopTime, presentValue, undeducted, byYear);
        }

        private void borrow(double cost) {
            Terms.Loan stated = terms.loan().orElseThrow();
            Loan loan = new Loan(stated.rate(), stated.months(), stated.down());
            pay(loan.downPayment(cost), 0, asOf);
            int made = 0;
            while (made < loan.months() && days(loan.paymentDate(asOf, made + 1)) <= tradeDays) {
                made++;
                LocalDate due = loan.paymentDate(asOf, made);
                double taxSaved = terms.taxRate() * loan.interest(cost, made);
                pay(loan.payment(cost) - taxSaved, days(due), due);
            }
            pay(loan.balance(cost, made), tradeDays, tradeDate);
        }

        /** Deducts what falls before the trade; returns what does not. */
        private double deduct(Terms.Tax tax, double base, double shopTime) {
            pay(-tax.rate() * shopTime, 0, asOf);
            double left = base;
            for (int k = 0; k < tax.schedule().size(); k++) {
                LocalDate yearEnd = LocalDate.of(asOf.getYear() + k, Month.DECEMBER, 31);
                if (days(yearEnd) <= tradeDays) {
                    double part = base * tax.schedule().get(k);
                    pay(-tax.rate() * part, days(yearEnd), yearEnd);
                    left -= part;
                }
            }
            return left;
        }

        private void pay(double nominal, double days, LocalDate date) {
            presentValue += nominal * discount(days);
            byYear.merge(date.getYear(), nominal, Double::sum);
        }

        private double days(LocalDate date) {
            return ChronoUnit.DAYS.between(asOf, date);
        }

        double discount(double days) {
            return Math.exp(-Math.log1p(terms.discountRate()) * days / DAYS_PER_YEAR);
        }
    }
}
