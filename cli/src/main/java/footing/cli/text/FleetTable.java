package footing.cli.text;

import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import footing.core.fleet.ResolvedCrew;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Odds;
import footing.io.words.Verb;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A line for each machine, by crew: what to do, the range of what it saves, the chance, the start cost. */
final class FleetTable {
    private static final int LEAST_ID = 7;
    private static final int MOST_ID = 10;
    private static final int SAVES = 9;
    private static final int PAYS = 9;
    private static final int START = 7;
    private static final int FIGURES = SAVES + 1 + PAYS + 1 + START;

    private final List<Advice> machines;
    private final Lines lines;
    private final Bar bar;
    private final int id;
    private final int what;

    FleetTable(List<Advice> machines, Lines lines) {
        this.machines = machines;
        this.lines = lines;
        List<Saving> savings = new ArrayList<>();
        machines.forEach(a -> savings.addAll(saving(a)));
        bar = new Bar(lines.letters(), savings);
        int longest = machines.stream().mapToInt(a -> a.id().length()).max().orElse(0);
        id = Math.max(LEAST_ID, Math.min(MOST_ID, longest));
        what = Lines.WIDTH - id - Bar.WIDTH - FIGURES - 3;
    }

    private static List<Saving> saving(Advice a) {
        EntryAnswer about = a.about();
        return about == null ? List.of() : List.of(about.saving());
    }

    void print() {
        lines.line(cells("", "", bar.scale()) + figures("saves in", "pays", "at the"));
        lines.line(cells("machine", "what to do", bar.empty()) + figures("its life", "in", "start"));
        Map<ResolvedCrew, List<Advice>> crews = new LinkedHashMap<>();
        machines.forEach(a -> crews.computeIfAbsent(a.machine().machine().crew(), c -> new ArrayList<>())
                .add(a));
        crews.forEach((crew, some) -> {
            String people = crew.people() == 1 ? "one person" : Figures.count(crew.people()) + " people";
            lines.paragraph(crewName(crew.id()) + ", " + people);
            some.forEach(this::row);
        });
    }

    /** An id keeps its case. */
    private static String crewName(String id) {
        String name = Naming.crew(id);
        return name.equals(id) ? id : Lists.capital(name);
    }

    private void row(Advice a) {
        List<String> words = Lines.wrap(a.row(), what);
        String name = a.id();
        if (name.length() > id) {
            lines.paragraph(name);
            name = "";
        }
        lines.line(cells(name, words.get(0), drawn(a)) + figures(a));
        words.stream().skip(1).forEach(rest -> lines.line(cells("", rest, bar.empty())));
    }

    private String drawn(Advice a) {
        EntryAnswer about = a.about();
        return about == null ? bar.empty() : bar.of(about.saving(), isKept(a));
    }

    private static boolean isKept(Advice a) {
        return a.verb() == Verb.KEEP || a.verb() == Verb.ORDER_AS_IT_COMES;
    }

    private static String figures(Advice a) {
        EntryAnswer about = a.about();
        if (about == null) {
            return " " + Lines.right("no other choice", FIGURES);
        }
        Saving saving = about.saving();
        if (isKept(a)) {
            return " " + Lines.right("next best: " + Figures.size(saving.mean()) + " more", FIGURES);
        }
        return figures(Figures.money(saving.mean()), Odds.column(saving.chance()), Figures.money(about.startCost()));
    }

    private static String figures(String saves, String pays, String start) {
        return " " + Lines.right(saves, SAVES) + " " + Lines.right(pays, PAYS) + " " + Lines.right(start, START);
    }

    private String cells(String name, String words, String drawn) {
        return Lines.left(name, id) + " " + Lines.left(words, what) + " " + drawn;
    }
}
