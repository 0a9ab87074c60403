package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import footing.core.fleet.ResolvedCrew;
import footing.io.figure.FleetFigure;
import footing.io.figure.Scale;
import footing.io.paper.Markup;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Odds;
import footing.io.words.Reason;
import footing.io.words.Verb;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A line for each machine, by crew, all on one scale. */
final class MachineLines {
    private final Answer answer;
    private final Markup out;
    private final Scale scale;

    MachineLines(Answer answer, Markup out) {
        this.answer = answer;
        this.out = out;
        scale = Scale.of(FleetFigure.of(answer));
    }

    static boolean isKept(Advice a) {
        return a.verb() == Verb.KEEP || a.verb() == Verb.ORDER_AS_IT_COMES;
    }

    /**
     * Writes the lines.
     *
     * @param why with the reason of each below what to do
     */
    void write(List<Advice> some, boolean why) {
        out.open("table", "class", why ? "lines reasoned" : "lines")
                .open("thead")
                .open("tr");
        for (String head : List.of("machine", "what to do")) {
            out.element("th", head, "class", "t", "scope", "col");
        }
        out.element("th", "from a bad outcome to a good one", "class", "t", "scope", "col", "colspan", "2");
        for (String head : List.of("saves in its life", "pays in", "at the start")) {
            out.element("th", head, "class", "n", "scope", "col");
        }
        out.close().close().open("tbody");
        Map<ResolvedCrew, List<Advice>> byCrew = new LinkedHashMap<>();
        some.forEach(a -> byCrew.computeIfAbsent(a.machine().machine().crew(), c -> new ArrayList<>())
                .add(a));
        byCrew.forEach((crew, its) -> {
            out.open("tr")
                    .element("td", crew(crew), "class", "crew", "colspan", "7")
                    .close();
            its.forEach(a -> line(a, why));
        });
        out.close().close();
    }

    private static String crew(ResolvedCrew crew) {
        return Lists.capital(Naming.crew(crew.id())) + ", "
                + (crew.people() == 1 ? "one person" : Figures.count(crew.people()) + " people");
    }

    private void line(Advice a, boolean why) {
        EntryAnswer about = a.about();
        boolean kept = isKept(a);
        out.open("tr", "class", kept ? "kept" : "changes");
        out.element("td", a.id(), "class", "t id");
        out.open("td", "class", "t what").text(a.row());
        if (why) {
            out.element("div", Reason.of(answer, a), "class", "why");
        }
        out.close();
        out.open("td", "class", "bar");
        if (about != null) {
            bar(about.saving(), kept);
        }
        out.close();
        if (about == null) {
            out.element("td", "no other choice", "class", "n", "colspan", "4");
        } else if (kept) {
            out.element(
                    "td", "next best: " + Figures.size(about.saving().mean()) + " more", "class", "n", "colspan", "4");
        } else {
            out.element("td", range(about.saving()), "class", "n");
            out.element("td", Cell.money(about.saving().mean()).shown(), "class", "n");
            out.element("td", Odds.column(about.saving().chance()), "class", "n");
            out.element("td", Cell.money(about.startCost()).shown(), "class", "n");
        }
        out.close();
    }

    /** '−369 to 1,131'. */
    static String range(Saving saving) {
        return Cell.money(saving.p10()).shown() + " to "
                + Cell.money(saving.p90()).shown();
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
}
