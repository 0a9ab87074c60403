package footing.io.workbook;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Saving;
import footing.io.words.Advice;
import footing.io.words.Headline;
import java.util.List;
import java.util.Locale;

/** The whole fleet: a line for each machine with what to do, what it saves and costs at the start, and the sums. */
final class FleetTab {
    private static final int HEADS = 3;
    private static final int START = 5;
    private static final int SAVING = 6;

    private final Tab tab;

    FleetTab(Tab tab) {
        this.tab = tab;
    }

    void write(Answer answer, PackagesTab packages) {
        tab.text(0, 0, answer.of().heading().title(), Look.TITLE);
        tab.lead(1, SAVING + 3, Headline.of(answer));
        tab.heads(
                HEADS,
                0,
                5,
                List.of(
                        "machine",
                        "kind",
                        "crew",
                        "what to do",
                        "verdict",
                        "start cost",
                        "saving over its life",
                        "if it goes badly (one in ten is worse)",
                        "if it goes well (one in ten is better)",
                        "pays in this share of the ways it could go"));
        int row = HEADS + 1;
        for (Advice advice : Advice.all(answer)) {
            machine(row++, advice, packages);
        }
        total(row, answer);
        tab.note(
                row + 2,
                SAVING + 3,
                "Start cost and saving are live and lead to the cash flow sheets. The other figures are as simulated. Where"
                        + " on average nothing beats what it has (start cost and saving 0) they are of the wheels it"
                        + " was weighed against.");
        tab.widths(0, 14, 24, 14, 36, 10, 13, 13, 14, 14, 12);
        tab.freeze(HEADS + 1, 1);
    }

    private void machine(int row, Advice advice, PackagesTab packages) {
        MachineAnswer m = advice.machine();
        tab.text(row, 0, m.id());
        tab.text(row, 1, m.machine().kind());
        tab.text(row, 2, m.machine().crew().id());
        tab.text(row, 3, advice.row());
        tab.text(row, 4, m.verdict().name().toLowerCase(Locale.ROOT));
        tab.formula(row, START, packages.startCost(m, m.choice().entry()), Look.MONEY);
        tab.formula(row, SAVING, packages.saving(m, m.choice().entry()), Look.MONEY);
        EntryAnswer about = advice.about();
        if (about != null) {
            range(row, about.saving(), Look.MONEY);
        }
    }

    private void range(int row, Saving saving, Look look) {
        tab.number(row, SAVING + 1, saving.p10(), look);
        tab.number(row, SAVING + 2, saving.p90(), look);
        tab.number(row, SAVING + 3, saving.chance(), Look.SHARE);
    }

    private void total(int row, Answer answer) {
        tab.text(row, 0, "all machines", Look.STRONG);
        for (int column : new int[] {START, SAVING}) {
            String all = tab.at(HEADS + 1, column).to(tab.at(row - 1, column)).local();
            tab.formula(row, column, "SUM(" + all + ")", Look.MONEY_TOTAL);
        }
        range(row, answer.fleet().saving(), Look.MONEY_TOTAL);
    }
}
