package footing.core.plain;

import static java.time.temporal.ChronoUnit.DAYS;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.util.List;

/**
 * Rule 6 and the start's side of rule 8: what the change costs at once, and how it is paid and deducted.
 *
 * @param cost before tax and loan
 * @param shop the shop time in it
 */
public record PlainStart(double cost, double shop) {
    public static PlainStart of(ResolvedMachine m, Entry entry) {
        if (entry.id().equals(m.carried().id()) || entry.when() == When.WORN) {
            return new PlainStart(0, 0);
        }
        if (m.isNew() && entry.upcharge().isPresent()) {
            return new PlainStart(entry.upcharge().getAsDouble(), 0);
        }
        double goods = 0;
        double shopHours = 0;
        boolean changed = false;
        for (Position position : Position.values()) {
            ResolvedAssembly wanted = m.assembly(entry, position);
            ResolvedAssembly carried = m.assembly(m.carried(), position);
            double count = PlainModel.at(m.counts(), position);
            if (m.differs(entry, position) && wanted.madeByTreating(carried)) {
                goods += count * wanted.treatPrice();
                shopHours += wanted.treatHours();
            } else if (m.differs(entry, position)) {
                goods += count * wanted.price() - (wanted.carryOn() > 0 ? 0 : takeOffs(m, position));
                shopHours += m.isNew() ? 0 : wanted.changeHours();
                changed = true;
            }
        }
        shopHours += changed && !m.isNew() ? m.relevel() : 0;
        double shop = shopHours * m.terms().shopRate();
        return new PlainStart(goods + shop, shop);
    }

    /** What the carried set fetches when it comes off. */
    private static double takeOffs(ResolvedMachine m, Position position) {
        ResolvedAssembly carried = m.assembly(m.carried(), position);
        double medianLife = carried.life().likely() * m.groundWear();
        double left = Math.max(0, 1 - PlainModel.at(m.worn(), position) / medianLife);
        return PlainModel.at(m.counts(), position) * carried.takeOff() * carried.price() * left;
    }

    /** Writes the purchase with its tax relief; returns what is not yet deducted at the trade. */
    double pay(ResolvedMachine m, PlainLedger ledger) {
        PlainClock.Moment atOnce = new PlainClock.Moment(0, m.asOf());
        double tax = m.terms().taxRate();
        if (m.terms().loanApplies() && m.terms().loan().isPresent()) {
            payByLoan(m, m.terms().loan().get(), ledger);
        } else {
            ledger.write(PlainPart.PURCHASE, 0, atOnce, cost, cost);
        }
        ledger.write(PlainPart.PURCHASE, 0, atOnce, 0, -tax * shop);
        double tradeDays = ledger.clock.days(m.hoursLeft());
        double notDeducted = cost - shop;
        List<Double> schedule = m.terms().tax().map(Terms.Tax::schedule).orElse(List.of());
        for (int k = 1; k <= schedule.size(); k++) {
            LocalDate yearEnd = LocalDate.of(m.asOf().getYear() + k - 1, 12, 31);
            double days = DAYS.between(m.asOf(), yearEnd);
            if (days <= tradeDays) {
                double deducted = schedule.get(k - 1) * (cost - shop);
                ledger.write(PlainPart.PURCHASE, 0, new PlainClock.Moment(days, yearEnd), 0, -tax * deducted);
                notDeducted -= deducted;
            }
        }
        return notDeducted;
    }

    private void payByLoan(ResolvedMachine m, Terms.Loan loan, PlainLedger ledger) {
        double down = loan.down() * cost;
        ledger.write(PlainPart.PURCHASE, 0, new PlainClock.Moment(0, m.asOf()), down, down);
        double owed = cost - down;
        double payment = payment(owed, loan.rate() / 12, loan.months());
        PlainClock.Moment trade = ledger.clock.at(m.hoursLeft());
        for (int k = 1; k <= loan.months(); k++) {
            LocalDate date = m.asOf().plusMonths(k);
            double days = DAYS.between(m.asOf(), date);
            if (days > trade.days()) {
                ledger.write(PlainPart.PURCHASE, 0, trade, 0, owed);
                return;
            }
            double interest = owed * loan.rate() / 12;
            double net = payment - m.terms().taxRate() * interest;
            ledger.write(PlainPart.PURCHASE, 0, new PlainClock.Moment(days, date), 0, net);
            owed -= payment - interest;
        }
    }

    /** The level payment that clears a debt in so many months. */
    static double payment(double owed, double monthlyRate, int months) {
        return monthlyRate == 0 ? owed / months : owed * monthlyRate / -Math.expm1(-months * Math.log1p(monthlyRate));
    }
}
