package footing.cli.text;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.fleet.Case;
import footing.io.words.Advice;
import footing.io.words.Cautions;
import footing.io.words.Figures;
import footing.io.words.FindOut;
import footing.io.words.Headline;
import footing.io.words.MoneyBasis;
import footing.io.words.Origins;
import footing.io.words.Reason;
import footing.io.words.TurningGuess;
import footing.io.words.Worth;
import java.util.Comparator;
import java.util.List;

/** An answer as a page for the terminal: the sentence, the money, a line for each machine, why, and what to do next. */
public final class AnswerText {
    private static final int MOST_GUESSES = 5;
    private static final int MOST_TO_FIND_OUT = 3;

    private final Answer answer;
    private final String narrowed;
    private final NextSteps next;
    private final List<Advice> machines;
    private final Lines lines;

    private AnswerText(Answer answer, String narrowed, NextSteps next, Letters letters) {
        this.answer = answer;
        this.narrowed = narrowed;
        this.next = next;
        machines = Advice.all(answer);
        lines = new Lines(letters);
    }

    /**
     * The page.
     *
     * @param narrowed how much surer records make it; empty if nothing is learned from any
     */
    public static String of(Answer answer, String narrowed, NextSteps next, Letters letters) {
        return new AnswerText(answer, narrowed, next, letters).told();
    }

    private String told() {
        top();
        table();
        lines.head("Why");
        machines.forEach(a -> lines.hanging("  " + a.id() + "  ", Reason.of(answer, a)));
        if (machines.size() == 1) {
            new MachineText(answer.of(), machines.get(0), lines).print();
        } else {
            FlatText.dearest(dearest(), lines);
        }
        guesses();
        findOut();
        caution();
        foot();
        return lines.toString();
    }

    private void top() {
        Case.Heading heading = answer.of().heading();
        lines.paragraph(heading.title());
        lines.paragraph("As of " + heading.asOf() + ". " + MoneyBasis.of(answer.of()) + ".");
        if (!answer.complete()) {
            lines.blank().paragraph("STOPPED before everything was known. What follows is what was known by then.");
        }
        lines.blank().paragraph(Headline.of(machines)).blank();
        Worth.of(answer).forEach(lines::paragraph);
        if (!narrowed.isEmpty()) {
            lines.paragraph(narrowed);
        }
        answer.warnings().forEach(w -> lines.hanging("Mind: ", w));
        lines.blank();
    }

    private void table() {
        if (machines.stream().allMatch(a -> a.about() == null)) {
            return;
        }
        new FleetTable(machines, lines).print();
        Letters letters = lines.letters();
        lines.blank()
                .paragraph("The line runs from a bad outcome (one in ten is worse) to a good one (one in ten is"
                        + " better); " + letters.mean + " is the average, " + letters.zero
                        + " no difference. Where a machine stays as it is, the line shows its next best wheels.");
    }

    /** The machine whose change is worth most; if none changes, the one whose flats cost most. */
    private Advice dearest() {
        return machines.stream()
                .max(Comparator.<Advice>comparingDouble(
                                a -> a.machine().choice().saving().mean())
                        .thenComparingDouble(AnswerText::flatsCost))
                .orElseThrow();
    }

    private static double flatsCost(Advice a) {
        EntryAnswer carried = a.machine().carried();
        return carried.parts().repairs()
                + carried.parts().crewTime()
                + carried.parts().lostWork();
    }

    private void guesses() {
        if (answer.machines().stream().allMatch(m -> m.guesses() == null)) {
            return;
        }
        List<TurningGuess> guesses = TurningGuess.of(answer);
        if (guesses.isEmpty()) {
            lines.head("No guess of Footing, moved by a fifth either way, turns what is said above.");
            return;
        }
        lines.head("Guesses that could turn a verdict, the weightiest first");
        guesses.stream().limit(MOST_GUESSES).forEach(g -> lines.hanging("  ", g.told(answer)));
        if (guesses.size() > MOST_GUESSES) {
            lines.item("and " + Figures.word(guesses.size() - MOST_GUESSES) + " more; all of them:");
            next.everything().forEach(lines::line);
        }
    }

    private void findOut() {
        if (!FindOut.isKnown(answer)) {
            return;
        }
        List<FindOut> worth = FindOut.of(answer);
        lines.head("What to find out first");
        if (worth.isEmpty()) {
            lines.item("Nothing: knowing more before you decide would hardly be worth anything.");
        }
        worth.stream().limit(MOST_TO_FIND_OUT).forEach(f -> lines.item(f.told(answer.of())));
    }

    private void caution() {
        if (Cautions.apply(machines)) {
            lines.blank().paragraph(Cautions.IN_SHORT);
        }
    }

    private void foot() {
        lines.blank().paragraph(Origins.told(answer));
        lines.paragraph("Each machine was run through " + Figures.money(answer.futures())
                + " ways it could go, the same ones for all its wheels. " + answer.reached());
        lines.head("Next");
        next.of(answer, dearest()).forEach(step -> {
            lines.item(step.does());
            step.command().forEach(lines::line);
        });
    }
}
