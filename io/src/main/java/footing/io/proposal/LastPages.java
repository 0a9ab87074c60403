package footing.io.proposal;

import footing.core.answer.Answer;
import footing.io.trial.TrialQuote;
import footing.io.words.Advice;
import footing.io.words.Cautions;
import java.util.List;

/** What follows the machines: what all of them assume, the order sheet, the after-list. */
final class LastPages {
    private final Answer answer;
    private final Pages pages;

    LastPages(Answer answer, Pages pages) {
        this.answer = answer;
        this.pages = pages;
    }

    void write(List<TrialQuote> trials) {
        pages.out().open("div", "class", "fresh");
        pages.heading("h2", "What every answer here assumes");
        pages.paragraph(AssumptionGrid.LEGEND, "note");
        pages.table(Assumptions.money(answer));
        AssumptionGrid.crews(answer).forEach(pages::table);
        pages.table(AssumptionGrid.fixes(answer));
        AssumptionGrid.wheels(answer).forEach(pages::table);
        int machines = answer.machines().size();
        if (machines > 1 && machines <= Proposal.MOST_WHOLE) {
            AssumptionGrid.machines(answer).forEach(pages::table);
        }
        tried(trials);
        pages.out().close();
        order();
        after();
    }

    private void tried(List<TrialQuote> trials) {
        if (trials.isEmpty()) {
            return;
        }
        pages.heading("h2", "Tried side by side");
        pages.paragraph("No money in this document rests on these trials; they stand beside it.", "note");
        for (TrialQuote trial : trials) {
            pages.list(trial.lines());
        }
        pages.list(trials.stream().flatMap(t -> t.limits().stream()).distinct().toList());
    }

    private void order() {
        OrderSheet order = new OrderSheet(answer);
        pages.out().open("div", "class", "fresh");
        pages.heading("h2", "Order sheet");
        if (order.now().isEmpty()) {
            pages.paragraph("Nothing is to be ordered now.", "");
        }
        pages.table(order.now());
        pages.table(order.ifTaken());
        pages.table(order.nextSets());
        pages.paragraph(
                "Dates of sets are at the middle of their lives: half of them wear out earlier. Toss-ups are planned as"
                        + " they are now.",
                "note");
        pages.table(order.spares());
        pages.paragraph(
                "How many to hold is yours to say: one of each size a crew shares, mounted and aired, is common"
                        + " practice, no source.",
                "note");
        pages.out().open("div", "class", "part whole");
        pages.heading("h3", "To have in writing of the maker or dealer before ordering (common practice, no source)");
        pages.list(InWriting.OF_THE_MAKER);
        pages.out().close().open("div", "class", "part whole");
        pages.heading("h3", "To have in writing of the lender (common practice, no source)");
        pages.list(InWriting.OF_THE_LENDER);
        pages.out().close().close();
    }

    private void after() {
        Table after = AfterList.of(answer);
        pages.out().open("div", "class", after.isEmpty() ? "part" : "fresh");
        pages.heading("h2", "After-list");
        if (after.isEmpty()) {
            pages.paragraph("No machine is clearly advised to change: nothing comes after.", "");
        } else {
            pages.paragraph(
                    "Dates are counted from " + answer.of().heading().asOf()
                            + ", the date of the case, by the hours each machine runs; where the change comes later they"
                            + " move with it. The hour meter counts before the date, and the operator's manual before every line.",
                    "note");
            pages.bare(after);
        }
        if (Cautions.apply(Advice.all(answer))) {
            pages.heading("h3", "Cautions");
            pages.list(Cautions.AT_WORK);
        }
        pages.out().close();
    }
}
