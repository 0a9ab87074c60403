package footing.io.workbook;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.ResolvedMachine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** 'Change me' and the engines behind it: one for each machine, or for those with the most at stake in a large fleet. */
final class Changing {
    /** Engines of a large fleet. */
    static final int MOST = 8;

    private final Answer answer;
    private final Book book;
    private final ChangeTab change;
    private final PayingTab paying;
    private final List<MachineAnswer> machines;

    Changing(Answer answer, Book book, Tab changeTab, AssumptionsTab assumptions, PayingTab paying) {
        this.answer = answer;
        this.book = book;
        this.paying = paying;
        machines = machines(answer);
        change = new ChangeTab(changeTab, answer.of(), assumptions, machines.size());
    }

    private static List<MachineAnswer> machines(Answer answer) {
        List<MachineAnswer> all = new ArrayList<>(
                answer.machines().stream().filter(m -> m.bestChange() != null).toList());
        if (CaseWorkbook.small(answer)) {
            return all;
        }
        all.sort(Comparator.comparingDouble(
                        (MachineAnswer m) -> Math.abs(entry(m).saving().mean()))
                .reversed());
        return all.subList(0, Math.min(MOST, all.size()));
    }

    private static EntryAnswer entry(MachineAnswer m) {
        EntryAnswer best = m.bestChange();
        if (best == null) {
            throw new IllegalArgumentException(m.id() + " has nothing to change to");
        }
        return best;
    }

    void write() {
        machines.forEach(m -> change.inputs(m, entry(m).entry()));
        change.write(note());
        if (machines.isEmpty()) {
            return;
        }
        RulesTab rules = new RulesTab(book.tab("Rules", ""));
        rules.write();
        for (int i = 0; i < machines.size(); i++) {
            MachineAnswer m = machines.get(i);
            ResolvedMachine.Entry entry = entry(m).entry();
            MachineCells cells = new MachineCells(change, answer.of(), m.machine());
            EngineTab engine = new EngineTab(book.tab(m.id(), " engine"), rules, cells, entry, paying);
            engine.write();
            change.result(i, m, entry, engine);
        }
    }

    private String note() {
        if (machines.isEmpty()) {
            return "No machine here has another package to change to.";
        }
        int left = answer.machines().size() - machines.size();
        return CaseWorkbook.small(answer) || left == 0
                ? "Compared is the recommended package, or the best other one where a machine keeps what it has."
                : "Here are the " + machines.size()
                        + " machines with the most at stake; footing workbook CASE --machine ID"
                        + " does the same for any other.";
    }
}
