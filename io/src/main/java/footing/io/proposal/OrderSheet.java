package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Pieces;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What to buy: at once, at the next worn set, to hold as spares. */
final class OrderSheet {
    private final Answer answer;
    private final Wheels wheels;
    private final List<Advice> machines;

    OrderSheet(Answer answer) {
        this.answer = answer;
        wheels = new Wheels(answer.of());
        machines = Advice.all(answer);
    }

    /** What the clear advice takes at the start; its total is the start cost of those machines. */
    Table now() {
        return order(
                "order-now",
                "Now",
                machines.stream().filter(a -> a.verb().changes()).toList());
    }

    /** What toss-ups take at the start, should they be taken the way they lean. */
    Table ifTaken() {
        return order(
                "order-toss-ups",
                "Only if you make the changes the toss-ups lean to",
                machines.stream()
                        .filter(a -> !a.verb().changes() && a.leansToChange())
                        .toList());
    }

    private Table order(String id, String title, List<Advice> some) {
        Table.Builder table = Table.named(id, title, "machine", "what", "#how many", "#each", "#in all", "whose price");
        double total = 0;
        boolean any = false;
        for (Advice a : some) {
            EntryAnswer choice = a.machine().choice();
            if (choice.entry().when() == When.NOW) {
                lines(table, a, choice);
                total += choice.startCost();
                any = true;
            }
        }
        if (any) {
            table.row(Cell.text("In all"), Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.price(total), Cell.EMPTY);
        }
        return table.built();
    }

    private void lines(Table.Builder table, Advice a, EntryAnswer choice) {
        ResolvedMachine m = a.machine().machine();
        if (m.isNew() && choice.entry().upcharge().isPresent()) {
            double price = choice.entry().upcharge().getAsDouble();
            String what = Lists.capital(Pieces.changed(m, choice.entry())) + ", ordered with the machine";
            String whose = "yours, as of " + m.asOf();
            table.row(
                    Cell.text(a.id()),
                    Cell.text(what),
                    Cell.count(1),
                    Cell.price(price),
                    Cell.price(price),
                    Cell.text(whose));
            return;
        }
        double goods = 0;
        for (Position p : Position.values()) {
            if (m.differs(choice.entry(), p)) {
                goods += line(table, m, choice, p);
            }
        }
        extra(table, a.id(), "Shop time", choice.outcome().shopTime());
        extra(
                table,
                a.id(),
                "Less what the wheels taken off fetch",
                choice.startCost() - choice.outcome().shopTime() - goods);
    }

    private double line(Table.Builder table, ResolvedMachine m, EntryAnswer choice, Position p) {
        ResolvedAssembly wanted = m.assembly(choice.entry(), p);
        boolean treated = wanted.madeByTreating(m.assembly(m.carried(), p));
        double each = treated ? wanted.treatPrice() : wanted.price();
        double all = m.count(p) * each;
        table.row(
                Cell.text(m.id()),
                Cell.text(wheels.name(wanted) + (treated ? ", made of the tires on it" : "")),
                Cell.count(m.count(p)),
                Cell.price(each),
                Cell.price(all),
                Cell.text(wheels.priceOrigin(m, wanted, treated ? Key.TREAT_PRICE : Key.PRICE)));
        return all;
    }

    private static void extra(Table.Builder table, String machine, String what, double money) {
        if (Math.abs(money) >= 0.005) {
            table.row(Cell.text(machine), Cell.text(what), Cell.EMPTY, Cell.EMPTY, Cell.price(money), Cell.EMPTY);
        }
    }

    /** Every machine's next sets, in the order in which they come. */
    Table nextSets() {
        Table.Builder table = Table.named(
                "next-sets",
                "At the next worn set",
                "about",
                "#hour meter",
                "machine",
                "what",
                "#how many",
                "#each",
                "#in all",
                "whose price");
        nextSetsInOrder()
                .forEach(n -> table.row(
                        Cell.text(n.date().toString()),
                        Cell.meter(HourMeter.now(answer, n.machine()) + n.after()),
                        Cell.text(n.machine().id()),
                        Cell.text(wheels.name(n.fitted()) + (n.changes() ? "" : ", as on it then")),
                        Cell.count(n.count()),
                        Cell.price(n.price()),
                        Cell.price(n.count() * n.price()),
                        Cell.text(wheels.priceOrigin(
                                n.machine(), n.fitted(), n.changes() ? Key.PRICE : Key.RENEWAL_PRICE))));
        return table.built();
    }

    List<NextSet> nextSetsInOrder() {
        List<NextSet> sets = new ArrayList<>();
        for (Advice a : machines) {
            for (Position p : Position.values()) {
                NextSet.of(a.machine().machine(), choice(a), p).ifPresent(sets::add);
            }
        }
        sets.sort(java.util.Comparator.comparing(NextSet::date));
        return sets;
    }

    /** What the sheet plans for: the clear changes; a toss-up stays as it is until somebody decides. */
    static EntryAnswer choice(Advice a) {
        return a.verb().changes() ? a.machine().choice() : a.machine().carried();
    }

    /** One kind of wheel that can go flat, over the machines that run it. */
    private record Held(ResolvedMachine machine, ResolvedAssembly wheel, int wheels, double flats, List<String> on) {}

    /** What can still go flat once the advice is followed, and how often its machines do. */
    Table spares() {
        Map<String, Held> held = new LinkedHashMap<>();
        for (Advice a : machines) {
            ResolvedMachine m = a.machine().machine();
            EntryAnswer choice = choice(a);
            double aSeason = choice.counts().flats() * m.hoursPerYear() / m.hoursLeft();
            for (Position p : Position.values()) {
                ResolvedAssembly wheel =
                        m.assembly(choice.entry().when() == When.WORN ? m.carried() : choice.entry(), p);
                if (wheel.kind().holdsAir()) {
                    held.merge(wheel.id(), new Held(m, wheel, m.count(p), aSeason, List.of(m.id())), OrderSheet::both);
                }
            }
        }
        Table.Builder table = Table.named(
                "spares",
                "Spares: what can still go flat",
                "what",
                "#in use",
                "on",
                "#flats a season on these machines",
                "#each",
                "whose price",
                "to hold");
        held.values()
                .forEach(h -> table.row(
                        Cell.text(wheels.name(h.wheel())),
                        Cell.count(h.wheels()),
                        Cell.text(h.on().size() > 6 ? Figures.money(h.on().size()) + " machines" : Lists.and(h.on())),
                        Cell.count(h.flats()),
                        Cell.price(h.wheel().price()),
                        Cell.text(wheels.priceOrigin(h.machine(), h.wheel(), Key.PRICE)),
                        Cell.text("______")));
        return table.built();
    }

    private static Held both(Held a, Held b) {
        List<String> on = new ArrayList<>(a.on());
        on.addAll(b.on());
        return new Held(a.machine(), a.wheel(), a.wheels() + b.wheels(), a.flats() + b.flats(), on);
    }
}
