package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedCrew;
import footing.io.figure.FleetFigure;
import footing.io.figure.Scale;
import footing.io.paper.Markup;
import footing.io.words.Advice;
import footing.io.words.Cautions;
import footing.io.words.Figures;
import footing.io.words.FindOut;
import footing.io.words.Headline;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Odds;
import footing.io.words.Origins;
import footing.io.words.Reason;
import footing.io.words.TurningGuess;
import footing.io.words.Verb;
import footing.io.words.Worth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

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
    private final Scale scale;

    FirstPage(Answer answer, Pages pages) {
        this.answer = answer;
        this.pages = pages;
        out = pages.out();
        machines = Advice.all(answer);
        scale = Scale.of(FleetFigure.of(answer));
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
        pages.paragraph(Origins.told(answer), "note");
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
                "As of " + heading.asOf() + ". All money in " + heading.currency() + ", in today's value.", "note");
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
                .filter(a -> !isKept(a))
                .sorted(java.util.Comparator.comparingDouble(FirstPage::worth).reversed())
                .limit(MOST_LINES)
                .toList();
    }

    private static double worth(Advice a) {
        EntryAnswer about = a.about();
        return about == null ? 0 : about.saving().mean() + (a.verb().changes() ? 1e9 : 0);
    }

    static boolean isKept(Advice a) {
        return a.verb() == Verb.KEEP || a.verb() == Verb.ORDER_AS_IT_COMES;
    }

    /** A line for each machine, by crew, all on one scale. */
    private void lines(List<Advice> some) {
        if (!some.isEmpty()) {
            table(some);
        }
        int left = machines.size() - some.size();
        pages.paragraph(
                left == 0
                        ? ""
                        : (some.isEmpty() ? "Every machine has" : "The other " + Figures.word(left) + " have")
                                + " a line under 'All machines'.",
                "note");
        pages.paragraph(
                "The bar runs from a bad outcome (one in ten is worse) to a good one (one in ten is better), solid where"
                        + " it is a gain and open where it is a loss; the upright mark is the average, the thin line no"
                        + " difference. Where a machine stays as it is, the bar shows its next best wheels.",
                "note");
    }

    private void table(List<Advice> some) {
        out.open("table", "class", "lines").open("thead").open("tr");
        for (String head : List.of("machine", "what to do", "")) {
            out.element("th", head, "class", "t", "scope", "col");
        }
        for (String head : List.of("saves in its life", "pays in", "at the start")) {
            out.element("th", head, "class", "n", "scope", "col");
        }
        out.close().close().open("tbody");
        Map<ResolvedCrew, List<Advice>> byCrew = new LinkedHashMap<>();
        some.forEach(a -> byCrew.computeIfAbsent(a.machine().machine().crew(), c -> new ArrayList<>())
                .add(a));
        byCrew.forEach((crew, its) -> {
            out.open("tr").element("td", crew(crew), "class", "crew", "colspan", "6").close();
            its.forEach(this::line);
        });
        out.close().close();
    }

    private static String crew(ResolvedCrew crew) {
        return Lists.capital(Naming.crew(crew.id())) + ", "
                + (crew.people() == 1 ? "one person" : Figures.count(crew.people()) + " people");
    }

    private void line(Advice a) {
        EntryAnswer about = a.about();
        boolean kept = isKept(a);
        out.open("tr", "class", kept ? "kept" : "changes");
        out.element("td", a.id(), "class", "t id");
        out.element("td", a.row(), "class", "t what");
        out.open("td", "class", "bar");
        if (about != null) {
            bar(about.saving(), kept);
        }
        out.close();
        if (about == null) {
            out.element("td", "no other choice", "class", "n", "colspan", "3");
        } else if (kept) {
            out.element("td", "next best: " + Figures.size(about.saving().mean()) + " more", "class", "n", "colspan", "3");
        } else {
            out.element("td", Cell.money(about.saving().mean()).shown(), "class", "n");
            out.element("td", Odds.column(about.saving().chance()), "class", "n");
            out.element("td", Cell.money(about.startCost()).shown(), "class", "n");
        }
        out.close();
    }

    private void bar(Saving saving, boolean kept) {
        double zero = scale.at(0);
        double from = scale.at(saving.p10());
        double to = scale.at(saving.p90());
        out.open("div", "class", kept ? "track quiet" : "track");
        mark("loss", Math.min(from, zero), Math.min(to, zero));
        mark("gain", Math.max(from, zero), Math.max(to, zero));
        mark("zero", zero, zero);
        mark("mean", scale.at(saving.mean()), scale.at(saving.mean()));
        out.close();
    }

    private void mark(String style, double from, double to) {
        boolean point = style.equals("zero") || style.equals("mean");
        if (point || to - from >= 1) {
            String place = String.format(Locale.ROOT, "left:%.1f%%", from / 10)
                    + (point ? "" : String.format(Locale.ROOT, ";width:%.1f%%", (to - from) / 10));
            out.open("div", "class", style, "style", place).close();
        }
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
