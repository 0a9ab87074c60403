package footing.core.plain;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Terms;
import java.util.ArrayList;
import java.util.List;

/** Writes down the flows of one future, each with its present value and what the account sees. */
final class PlainLedger {
    final PlainClock clock;
    final List<PlainFuture.Flow> flows = new ArrayList<>();
    final List<PlainFuture.Upkeep> upkeep = new ArrayList<>();
    private final Terms terms;

    PlainLedger(ResolvedMachine m) {
        clock = PlainClock.of(m);
        terms = m.terms();
    }

    /** What a price of 1 today has become. */
    double inflated(double days) {
        return Math.pow(1 + terms.inflation(), days / 365);
    }

    /** A running cost at an operating hour, at today's price: it rises with inflation and lowers the tax. */
    void spend(PlainPart part, double hour, double today) {
        PlainClock.Moment moment = clock.at(hour);
        double nominal = today * (1 - terms.taxRate()) * inflated(moment.days());
        write(part, hour, moment, today, nominal);
    }

    /** Money at an instant as the account sees it: loan, tax, trade. */
    void write(PlainPart part, double hour, PlainClock.Moment moment, double today, double nominal) {
        double present = nominal / Math.pow(1 + terms.discountRate(), moment.days() / 365);
        flows.add(new PlainFuture.Flow(
                part,
                hour,
                moment.days(),
                today,
                present,
                nominal,
                moment.date().getYear()));
    }

    /** Looking after a set from one hour to another: the integral over the hours. */
    void upkeep(double from, double to, double perHour) {
        upkeep.add(new PlainFuture.Upkeep(from, to, perHour));
        double kept = perHour * (1 - terms.taxRate());
        double real = (1 + terms.inflation()) / (1 + terms.discountRate());
        for (PlainClock.Stretch s : clock.stretches(from, to)) {
            double present = kept * s.integral(real, s.lastDay());
            double nominal = kept * s.integral(1 + terms.inflation(), s.lastDay());
            flows.add(new PlainFuture.Flow(
                    PlainPart.UPKEEP, to, s.lastDay(), perHour * s.hours(), present, nominal, s.year()));
        }
    }
}
