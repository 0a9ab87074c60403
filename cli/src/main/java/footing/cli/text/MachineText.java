package footing.cli.text;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Case;
import footing.core.fleet.Terms;
import footing.core.future.Parts;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.GroundWords;
import footing.io.words.Levels;
import footing.io.words.Naming;
import footing.io.words.Odds;
import footing.io.words.PaidBack;
import footing.io.words.Pieces;
import footing.io.words.SlopeCaution;
import java.util.Comparator;
import java.util.List;

/** All there is to say about one machine: its choices, the ladder, where the money goes, the years, what moves it. */
final class MachineText {
    private static final int MOST_DRIVERS = 6;

    private final Case stated;
    private final Advice advice;
    private final MachineAnswer machine;
    private final Lines lines;

    MachineText(Case stated, Advice advice, Lines lines) {
        this.stated = stated;
        this.advice = advice;
        this.lines = lines;
        machine = advice.machine();
    }

    void print() {
        choices();
        ladder();
        money();
        levels();
        FlatText.all(advice, lines);
        years();
        drivers();
    }

    private String name(EntryAnswer e) {
        return e.entry().equals(machine.carried().entry())
                ? advice.asItIs() + ": " + Pieces.all(machine.machine(), e.entry())
                : Pieces.changedWhen(machine.machine(), e.entry());
    }

    /** With the id of its package. */
    private String named(EntryAnswer e) {
        String id = " (" + e.entry().id() + ")";
        String name = name(e);
        return (name.contains(id) ? name : name + id) + (neverDue(e) ? ": never comes due before the trade" : "");
    }

    private static boolean neverDue(EntryAnswer e) {
        Double never = e.neverFitted();
        return never != null && never >= 1;
    }

    private List<EntryAnswer> cheapestFirst() {
        return machine.entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .toList();
    }

    private void choices() {
        lines.head("Every choice for " + machine.id() + ", the cheapest over its life first");
        Table table = new Table("at the|start", "costs over|its life", "saves", "pays in");
        for (EntryAnswer e : cheapestFirst()) {
            boolean carried = e.entry().equals(machine.carried().entry());
            boolean quiet = carried || neverDue(e);
            table.row(
                    named(e),
                    List.of(
                            Figures.money(e.startCost()),
                            Figures.money(e.cost().mean()),
                            quiet ? "" : Figures.money(e.saving().mean()),
                            quiet ? "" : Odds.column(e.saving().chance())));
        }
        table.print(lines);
        lines.item("In brackets: what 'footing explain' calls it.");
        PaidBack.told(advice).forEach(lines::item);
        ground();
    }

    /** What each package does on the ground, where anything was measured. */
    private void ground() {
        MachineGround ground = MachineGround.of(stated, machine.id());
        if (ground.isSilent() || ground.packages().size() < 2) {
            return;
        }
        GroundWords words = new GroundWords(stated.heading().si());
        lines.head("What they do on the ground, against what it carries");
        for (PackageGround p : ground.packages().subList(1, ground.packages().size())) {
            words.line(ground.carried(), p)
                    .ifPresent(line -> lines.hanging("  " + wheels(p.wheels().id()) + "  ", line));
        }
        lines.item(SlopeCaution.of(ground));
        lines.item("More of it: footing ground CASE " + machine.id());
    }

    /** Those considered by what they are; the others, of which only the ground is known, by their id. */
    private String wheels(String packageId) {
        return machine.entries().stream()
                .filter(e -> e.entry().id().equals(packageId))
                .findFirst()
                .map(e -> Pieces.changed(machine.machine(), e.entry()))
                .orElse(packageId);
    }

    private void ladder() {
        if (machine.ladder().isEmpty()) {
            return;
        }
        lines.head("Step by step up from what it has: each step must earn its own price");
        Table table = new Table("more at|the start", "saves|more", "pays in");
        machine.ladder()
                .forEach(r -> table.row(
                        Pieces.changedWhen(machine.machine(), r.entry()),
                        List.of(
                                Figures.money(r.extraStart()),
                                Figures.money(r.extraSaving()),
                                Odds.column(r.chance()))));
        table.print(lines);
    }

    private void money() {
        lines.head("Where the money goes over its life, in today's money");
        Table table = new Table(
                "at the|start", "new|sets", "repairs", "paid|time", "work|lost", "upkeep", "trade-in", "in all");
        for (EntryAnswer e : cheapestFirst()) {
            Parts p = e.parts();
            table.row(
                    name(e),
                    List.of(
                            Figures.money(p.purchase()),
                            Figures.money(p.renewals()),
                            Figures.money(p.repairs()),
                            Figures.money(p.crewTime()),
                            Figures.money(p.lostWork()),
                            Figures.money(p.upkeep()),
                            Figures.money(-p.tradeIn()),
                            Figures.money(p.cost())));
        }
        table.print(lines);
        lines.item("Below zero is money in.");
        machine.machine().terms().loan().ifPresent(this::loan);
    }

    /** Why the start differs from what is paid at the start. */
    private void loan(Terms.Loan loan) {
        EntryAnswer about = advice.about();
        if (about == null || !machine.machine().terms().loanApplies() || !(about.startCost() > 0)) {
            return;
        }
        lines.item("The " + Figures.money(about.startCost()) + " for " + advice.piecesWhen() + " is paid over "
                + loan.months() + " months at " + Figures.count(100 * loan.rate()) + " %: "
                + Figures.money(about.parts().purchase()) + " in today's money.");
    }

    private void levels() {
        EntryAnswer about = advice.about();
        if (about == null) {
            return;
        }
        lines.head("Three prices of an hour: what " + advice.piecesWhen() + " save, counting");
        Table table = new Table("saves", "pays in");
        about.levels()
                .forEach(l ->
                        table.row(counting(l.counting()), List.of(Figures.money(l.mean()), Odds.column(l.chance()))));
        table.print(lines);
        lines.item(Levels.overtime(machine.machine().crew()));
    }

    private static String counting(EntryAnswer.Counting counting) {
        return switch (counting) {
            case PARTS -> "only parts and shop time";
            case PARTS_AND_TIME -> "the crew's paid time as well";
            case ALL -> "and the work that is lost";
        };
    }

    private void years() {
        EntryAnswer about = advice.about();
        if (about == null) {
            return;
        }
        lines.head("What leaves the bank account by year or never reaches it, in that year's money: "
                + advice.piecesWhen());
        Table table = new Table(advice.asItIs(), "with the|change", "difference", "so far");
        double soFar = 0;
        for (int year : about.yearly().keySet()) {
            double asItIs =
                    machine.carried().yearly().getOrDefault(year, Parts.NONE).cost();
            double changed = about.yearly().getOrDefault(year, Parts.NONE).cost();
            soFar += asItIs - changed;
            table.row(
                    Integer.toString(year),
                    List.of(
                            Figures.money(asItIs),
                            Figures.money(changed),
                            Figures.money(asItIs - changed),
                            Figures.money(soFar)));
        }
        table.print(lines);
        lines.item("A positive difference is money the change leaves you.");
    }

    private void drivers() {
        List<MachineAnswer.Driver> drivers = machine.drivers();
        if (drivers == null || drivers.isEmpty()) {
            return;
        }
        lines.head("What moves the saving of " + advice.piecesWhen() + " most");
        Table table = new Table("if|lower", "it|saves", "if|higher", "it|saves");
        drivers.stream()
                .sorted(Comparator.comparingDouble(MachineAnswer.Driver::swing).reversed())
                .limit(MOST_DRIVERS)
                .forEach(d -> driver(table, d));
        table.print(lines);
    }

    private void driver(Table table, MachineAnswer.Driver d) {
        table.row(
                Naming.moved(stated, d.input().input()) + (Naming.isGuess(d.input()) ? " (a guess)" : ""),
                List.of(
                        Naming.value(d.input().input().key().dimension(), d.low()),
                        Figures.money(d.savingAtLow()),
                        Naming.value(d.input().input().key().dimension(), d.high()),
                        Figures.money(d.savingAtHigh())));
    }
}
