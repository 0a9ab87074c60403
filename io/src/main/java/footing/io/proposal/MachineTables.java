package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Dimension;
import footing.core.fleet.Place;
import footing.core.fleet.Values;
import footing.core.future.Parts;
import footing.io.figure.EntryName;
import footing.io.figure.PricesOfAnHour;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import footing.io.words.FindOut;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Pieces;
import java.util.Comparator;
import java.util.List;

/** The tables of one machine. */
final class MachineTables {
    private final Answer answer;
    private final Advice advice;
    private final MachineAnswer machine;

    MachineTables(Answer answer, Advice advice) {
        this.answer = answer;
        this.advice = advice;
        machine = advice.machine();
    }

    List<Table> all() {
        return List.of(choices(), ladder(), parts(), years(), flats(), levels(), drivers(), findOut(), numbers());
    }

    private List<EntryAnswer> cheapestFirst() {
        return machine.entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .toList();
    }

    Table choices() {
        Table.Builder table = Table.named(
                "choices",
                "Every choice, the cheapest over its life first",
                "choice",
                "#at the start",
                "#costs over its life",
                "#saves",
                "#if it goes badly",
                "#if it goes well",
                "#pays in");
        for (EntryAnswer e : cheapestFirst()) {
            boolean carried = EntryName.isCarried(advice, e);
            table.row(
                    Cell.text(EntryName.of(advice, e)),
                    Cell.money(e.startCost()),
                    Cell.money(e.cost().mean()),
                    carried ? Cell.EMPTY : Cell.money(e.saving().mean()),
                    carried ? Cell.EMPTY : Cell.money(e.saving().p10()),
                    carried ? Cell.EMPTY : Cell.money(e.saving().p90()),
                    carried ? Cell.EMPTY : Cell.odds(e.saving().chance()));
        }
        return table.built();
    }

    Table ladder() {
        Table.Builder table = Table.named(
                "ladder",
                "The ladder: each step must earn its own price against the one below",
                "step",
                "#more at the start",
                "#saves more",
                "#pays in");
        machine.ladder()
                .forEach(r -> table.row(
                        Cell.text(Lists.capital(Pieces.changedWhen(machine.machine(), r.entry()))),
                        Cell.money(r.extraStart()),
                        Cell.money(r.extraSaving()),
                        Cell.odds(r.chance())));
        return table.built();
    }

    Table parts() {
        Table.Builder table = Table.named(
                "where-it-goes",
                "Where the money goes over its life, in today's money",
                "choice",
                "#at the start",
                "#new sets",
                "#repairs",
                "#paid time",
                "#lost work",
                "#upkeep",
                "#trade-in",
                "#in all");
        for (EntryAnswer e : cheapestFirst()) {
            Parts p = e.parts();
            table.row(
                    Cell.text(EntryName.of(advice, e)),
                    Cell.money(p.purchase()),
                    Cell.money(p.renewals()),
                    Cell.money(p.repairs()),
                    Cell.money(p.crewTime()),
                    Cell.money(p.lostWork()),
                    Cell.money(p.upkeep()),
                    Cell.money(-p.tradeIn() + 0.0),
                    Cell.money(p.cost()));
        }
        return table.built();
    }

    Table years() {
        Table.Builder table = Table.named(
                "by-year",
                "What leaves the bank account by year or never reaches it, in that year's money",
                "year",
                "#without the change",
                "#with the change",
                "#left by it so far");
        EntryAnswer about = advice.about();
        if (about != null) {
            double soFar = 0;
            for (int year : about.yearly().keySet()) {
                double asItIs = cost(machine.carried(), year);
                double changed = cost(about, year);
                soFar += asItIs - changed;
                table.row(
                        Cell.text(Integer.toString(year)), Cell.money(asItIs), Cell.money(changed), Cell.money(soFar));
            }
        }
        return table.built();
    }

    private static double cost(EntryAnswer e, int year) {
        return e.yearly().getOrDefault(year, Parts.NONE).cost();
    }

    /** What each way of mending a flat takes and costs, as the sentences of the flat by the clock have it. */
    Table flats() {
        Table.Builder table = Table.named(
                "one-flat",
                "One flat by the clock, as it is now",
                "what is done",
                "#flats over its life",
                "#hours until it cuts again",
                "#crew-hours pushed back",
                "#parts",
                "#wages to make it up",
                "#work lost",
                "#in all");
        MachineAnswer.CostPerFlat cost = machine.costPerFlat();
        if (cost != null) {
            cost.fixes()
                    .forEach(f -> table.row(
                            Cell.text(f.name()),
                            Cell.count(f.flats()),
                            Cell.count(f.delay()),
                            Cell.count(f.displaced()),
                            Cell.money(f.cash()),
                            Cell.money(f.paid()),
                            Cell.money(f.lost()),
                            Cell.money(ClockedFlat.total(f))));
        }
        return table.built();
    }

    /** The saving of what is advised, or of the next best, at each price of an hour. */
    Table levels() {
        Table.Builder table =
                Table.named("three-prices", "Three prices of an hour", "what is counted", "#saves", "#pays in");
        EntryAnswer about = advice.about();
        if (about != null) {
            about.levels()
                    .forEach(l -> table.row(
                            Cell.text(PricesOfAnHour.counting(l.counting())),
                            Cell.money(l.mean()),
                            Cell.odds(l.chance())));
        }
        return table.built();
    }

    Table drivers() {
        Table.Builder table = Table.named(
                "what-moves-it",
                "What moves the saving: one number alone other than it is",
                "number",
                "#if it is",
                "#it saves",
                "#if it is",
                "#it saves");
        List<MachineAnswer.Driver> drivers = machine.drivers() == null ? List.of() : machine.drivers();
        drivers.stream()
                .sorted(Comparator.comparingDouble(MachineAnswer.Driver::swing).reversed())
                .forEach(d -> {
                    Dimension dimension = d.input().input().key().dimension();
                    table.row(
                            Cell.text(Lists.capital(
                                            Naming.moved(answer.of(), d.input().input()))
                                    + (Naming.isGuess(d.input()) ? ", a guess" : "")),
                            new Cell(Naming.value(dimension, d.low()), d.low()),
                            Cell.money(d.savingAtLow()),
                            new Cell(Naming.value(dimension, d.high()), d.high()),
                            Cell.money(d.savingAtHigh()));
                });
        return table.built();
    }

    Table findOut() {
        Table.Builder table =
                Table.named("find-out", "What to find out first, and what knowing it is worth", "what", "#worth");
        MachineAnswer.FindOutFirst first = machine.findOutFirst();
        if (first != null) {
            first.each().stream()
                    .map(w -> new FindOut(w.input(), w.value()))
                    .filter(FindOut::shows)
                    .sorted(Comparator.comparingDouble(FindOut::value).reversed())
                    .forEach(f -> table.row(Cell.text(f.told(answer.of())), Cell.money(f.value())));
        }
        return table.built();
    }

    /** The numbers that are this machine's alone. */
    Table numbers() {
        Values values = new Values(answer.of(), answer.of().machine(machine.id()));
        return Assumptions.table(
                answer.of(),
                "numbers",
                "What this machine's answer assumes",
                values.all().stream()
                        .filter(n -> n.input().key().place() == Place.MACHINE)
                        .filter(n -> Assumptions.matters(answer.of(), n))
                        .toList());
    }
}
