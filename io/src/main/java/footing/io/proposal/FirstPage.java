package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.fleet.Case;
import footing.io.paper.Markup;
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
import java.util.ArrayList;
import java.util.List;

/** The answer for somebody who gives it two minutes. */
final class FirstPage {
    /** Lines that leave room on the page for the rest of it. */
    static final int MOST_LINES = 12;

    private static final int MOST_TURNS = 3;
    private static final int MOST_TO_FIND_OUT = 2;

    private final Answer answer;
    private final Pages pages;
    private final Markup out;
    private final List<Advice> machines;

    FirstPage(Answer answer, Pages pages) {
        this.answer = answer;
        this.pages = pages;
        out = pages.out();
        machines = Advice.all(answer);
    }

    void write() {
        heading();
        pages.paragraph(Headline.of(machines), "sentence");
        Worth.of(answer).forEach(w -> pages.paragraph(w, "worth"));
        answer.warnings().forEach(w -> pages.paragraph("Mind: " + w, "note"));
        lines(shown());
        turns();
        if (Cautions.apply(machines)) {
            pages.paragraph(Cautions.IN_SHORT, "caution");
        }
    }

    private void heading() {
        Case.Heading heading = answer.of().heading();
        Case.Prepared prepared = heading.prepared();
        List<String> who = new ArrayList<>();
        add(who, "For ", prepared.recipient());
        add(who, who.isEmpty() ? "Prepared by " : "prepared by ", prepared.by());
        add(who, "", prepared.on());
        pages.paragraph(String.join(", ", who), "who");
        out.element("h1", heading.title());
        pages.paragraph(
                "As of " + heading.asOf() + ". " + MoneyBasis.of(answer.of()) + ", in today's value. "
                        + Origins.told(answer),
                "note");
    }

    private static void add(List<String> who, String lead, @org.jspecify.annotations.Nullable String name) {
        if (name != null && !name.isBlank()) {
            who.add(lead + name);
        }
    }

    /** All of a few machines; of many those about which something is to be done, the dearest first. */
    private List<Advice> shown() {
        if (machines.size() <= MOST_LINES) {
            return machines;
        }
        return machines.stream()
                .filter(a -> a.verb().changes() || a.leansToChange())
                .sorted(java.util.Comparator.comparingDouble(FirstPage::worth).reversed())
                .limit(MOST_LINES)
                .toList();
    }

    private static double worth(Advice a) {
        EntryAnswer about = a.about();
        return about == null ? 0 : about.saving().mean() + (a.verb().changes() ? 1e9 : 0);
    }

    /** The lines and how to read them. */
    private void lines(List<Advice> some) {
        if (!some.isEmpty()) {
            new MachineLines(answer, out).write(some, false);
        }
        int left = machines.size() - some.size();
        pages.paragraph(
                left == 0
                        ? ""
                        : (some.isEmpty() ? "Every machine has" : "The other " + Figures.word(left) + " have")
                                + " a line under 'All machines'.",
                "note");
        pages.paragraph(
                "One in ten is worse than the bad outcome, one in ten better than the good one. The bar is solid where it is"
                        + " a gain; its upright mark is the average, the thin line no difference. Where a machine stays"
                        + " as it is: its next best wheels.",
                "note");
    }

    private void turns() {
        out.element("h2", "What would change this advice");
        List<String> turns = new ArrayList<>();
        machines.stream()
                .filter(a -> a.verb().changes())
                .map(a -> new String[] {a.id(), Reason.turns(answer, a)})
                .filter(t -> !t[1].isEmpty())
                .limit(MOST_TURNS)
                .forEach(t -> turns.add(t[0] + ": " + t[1]));
        boolean weighed = answer.machines().stream().anyMatch(m -> m.guesses() != null);
        List<TurningGuess> guesses = TurningGuess.of(answer);
        guesses.stream().limit(MOST_TURNS).forEach(g -> turns.add(g.told(answer)));
        FindOut.of(answer).stream().limit(MOST_TO_FIND_OUT).forEach(f -> turns.add(f.told(answer.of())));
        if (weighed && guesses.isEmpty()) {
            turns.add("No guess of Footing, moved by a fifth either way, turns what is said above.");
        }
        if (!weighed) {
            turns.add("This is a quick answer: which guesses could turn it was not worked out.");
        }
        pages.list(turns);
    }
}
