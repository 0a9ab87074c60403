package footing.io.proposal;

import footing.core.answer.EntryAnswer;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.future.MeterDate;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The next set that comes due at a position if what is recommended is done: a date to plan by, at the middle of the set's
 * life, by the rules the futures follow. Half the sets wear out earlier, half later.
 *
 * @param after operating hours from the date of the case
 * @param fitted what is put on then
 * @param price each, as it is then bought
 */
record NextSet(
        ResolvedMachine machine,
        Position position,
        double after,
        ResolvedAssembly fitted,
        boolean changes,
        double price) {
    /** Below this share of the wanted set's price the carried one is fitted for a short rest. */
    private static final double CHEAPER = 0.7;

    /** Empty if the set on it outlasts the machine's time here, or is run out to the trade. */
    static Optional<NextSet> of(ResolvedMachine m, EntryAnswer choice, Position position) {
        ResolvedAssembly carried = m.assembly(m.carried(), position);
        ResolvedAssembly wanted = m.assembly(choice.entry(), position);
        boolean fresh = choice.entry().when() == When.NOW
                && m.differs(choice.entry(), position)
                && !wanted.madeByTreating(carried);
        boolean now = choice.entry().when() == When.NOW;
        ResolvedAssembly on = now ? wanted : carried;
        double after = Math.max(0, median(m, on) - (fresh ? 0 : m.worn(position)));
        double rest = m.hoursLeft() - after;
        if (!(rest > 0) || rest < m.runOut()) {
            return Optional.empty();
        }
        boolean brief = rest < m.noNewSetWithin() * median(m, wanted) && carried.price() < CHEAPER * wanted.price();
        ResolvedAssembly fitted = brief ? carried : wanted;
        boolean same = fitted.id().equals(on.id());
        return Optional.of(
                new NextSet(m, position, after, fitted, !same, same ? fitted.renewalPrice() : fitted.price()));
    }

    private static double median(ResolvedMachine m, ResolvedAssembly a) {
        return a.life().likely() * m.groundWear();
    }

    int count() {
        return machine.count(position);
    }

    LocalDate date() {
        return MeterDate.of(machine, after);
    }
}
