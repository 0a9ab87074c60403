package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Terms;
import footing.io.figure.GroundLines;
import footing.io.figure.MachineFigures;
import footing.io.words.Advice;
import footing.io.words.Cautions;
import footing.io.words.ClockedFlat;
import footing.io.words.Figures;
import footing.io.words.Reason;
import java.util.List;

/** What there is to say of one machine, from the flat by the clock to the cautions. */
final class MachineBlock {
    /** How much is told of a machine. */
    enum Length {
        /** Everything. */
        WHOLE,
        /** A machine that stays as it is among several: without the figures about a change nobody advises. */
        SHORT
    }

    private static final int MOST_DRIVERS = 12;
    private static final int FEW_DRIVERS = 5;

    private final Answer answer;
    private final Advice advice;
    private final Pages pages;
    private final MachineTables tables;
    private final MachineFigures figures;

    MachineBlock(Answer answer, Advice advice, Pages pages) {
        this.answer = answer;
        this.advice = advice;
        this.pages = pages;
        tables = new MachineTables(answer, advice);
        figures = new MachineFigures(answer, advice);
    }

    /** How much to tell of a machine, of so many. */
    static Length length(Advice a, int machines) {
        return machines > 1 && MachineLines.isKept(a) ? Length.SHORT : Length.WHOLE;
    }

    void write(Length length) {
        pages.out().open("div", "class", length == Length.WHOLE ? "machine" : "machine short");
        pages.heading("h2", named(advice.machine().machine()) + ": " + advice.row());
        pages.paragraph(Reason.of(answer, advice), "reason");
        flat(length);
        pages.table(tables.choices());
        ladder();
        if (length == Length.WHOLE) {
            ground();
        }
        workings(length);
        pages.out().close();
    }

    /** 'E1, 60 in riding mower', or 'E1' where nobody said what it is. */
    private static String named(ResolvedMachine m) {
        return m.kind().isBlank() ? m.id() : m.id() + ", " + m.kind();
    }

    private void ground() {
        GroundLines ground = GroundLines.of(answer, advice);
        if (!ground.lines().isEmpty()) {
            pages.paragraph("On the ground, against what it carries:", "leads");
            pages.list(ground.lines());
            pages.paragraph(ground.caution(), "caution");
        }
    }

    private void flat(Length length) {
        if (length == Length.WHOLE) {
            figures.flatByTheClock().ifPresent(pages::figure);
        }
        MachineAnswer.CostPerFlat cost = advice.machine().costPerFlat();
        if (cost != null) {
            ClockedFlat.output(advice).ifPresent(said -> pages.paragraph(said, ""));
            pages.list(cost.fixes().stream()
                    .filter(f -> f.flats() > 0)
                    .map(f -> ClockedFlat.told(cost.fixes(), f))
                    .toList());
        }
        pages.paragraph(ClockedFlat.average(advice.machine()), "");
    }

    private void ladder() {
        Table ladder = tables.ladder();
        pages.table(ladder);
        if (ladder.isEmpty()) {
            pages.paragraph("No step up from what it has is cheaper over its life.", "");
        }
    }

    private void workings(Length length) {
        if (length == Length.WHOLE) {
            figures.pricesOfAnHour().ifPresent(pages::figure);
            pages.figure(figures.overHours());
            pages.figure(figures.whereItGoes());
        }
        pages.table(tables.parts());
        loan();
        if (length == Length.WHOLE) {
            figures.howSure().ifPresent(pages::figure);
            figures.byYear().ifPresent(pages::figure);
            pages.table(tables.years());
            figures.whatMovesIt().ifPresent(pages::figure);
        }
        drivers(length == Length.WHOLE ? MOST_DRIVERS : FEW_DRIVERS);
        pages.table(tables.findOut());
        if (answer.machines().size() == 1) {
            pages.table(tables.numbers());
        }
        if (Cautions.apply(List.of(advice))) {
            pages.heading("h3", "Cautions");
            pages.list(Cautions.AT_WORK);
        }
    }

    /** The numbers that move it most; the rest would fill pages. */
    private void drivers(int most) {
        Table drivers = tables.drivers();
        pages.table(drivers.first(most));
        int left = drivers.rows().size() - most;
        if (left > 0) {
            pages.paragraph(
                    "The other " + Figures.money(left)
                            + " numbers each move it less than these; the files of the tables" + " have them all.",
                    "note");
        }
    }

    /** Why the start differs from what is paid at the start. */
    private void loan() {
        EntryAnswer about = advice.about();
        Terms terms = advice.machine().machine().terms();
        if (about == null || terms.loan().isEmpty() || !terms.loanApplies() || !(about.startCost() > 0)) {
            return;
        }
        Terms.Loan loan = terms.loan().get();
        pages.paragraph(
                "The " + Figures.money(about.startCost()) + " for " + advice.piecesWhen() + " is paid over "
                        + loan.months() + " months at " + Figures.count(100 * loan.rate()) + " %: "
                        + Figures.money(about.parts().purchase()) + " in today's money.",
                "");
    }
}
