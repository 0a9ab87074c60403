package footing.io.workbook;

import footing.core.fleet.Key;
import footing.core.fleet.ResolvedAssembly;
import footing.core.future.HourGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** The steps over the hours left, a row each: hour, day, present value, and what is added column by column. */
final class Grid {
    static final int FACTOR = 4;
    static final int WEIGHT = 5;
    static final int RENEWED = 6;
    private static final int WEEKS = 7;

    private final Facts facts;
    private final Tab tab;
    private final int top;
    private final HourGrid hours;
    private final Map<String, Integer> flatColumns = new HashMap<>();
    private int next;

    Grid(Facts facts, int top, HourGrid hours) {
        this.facts = facts;
        tab = facts.tab();
        this.top = top;
        this.hours = hours;
    }

    void write() {
        int weeks = hours.fullWeeks().get(0).size();
        List<String> heads = new ArrayList<>(List.of(
                "step",
                "hour",
                "hours to the trade",
                "day",
                "a price of today counts for",
                "hours x that",
                "renewed if worn out here (not run bald)"));
        for (int w = 1; w <= weeks; w++) {
            heads.add("share in full weeks " + w);
        }
        tab.heads(top - 1, 0, heads);
        for (int j = 0; j <= EngineTab.STEPS; j++) {
            row(j, weeks);
        }
        next = WEEKS + weeks;
    }

    private void row(int j, int weeks) {
        int row = top + j;
        String step = tab.number(row, 0, j, Look.WHOLE).local();
        tab.formula(row, 1, step + "*" + facts.step(), Look.NUMBER);
        tab.formula(row, 2, facts.cells().hoursLeft() + "-" + at(1, j), Look.NUMBER);
        tab.number(row, 3, hours.days().get(j), Look.DAY);
        tab.formula(row, FACTOR, "Growth^(" + at(3, j) + "/365)", Look.FACTOR);
        String half = j == 0 || j == EngineTab.STEPS ? "/2" : "";
        tab.formula(row, WEIGHT, facts.step() + half + "*" + at(FACTOR, j), Look.FACTOR);
        tab.formula(row, RENEWED, share(j, facts.cells().own(Key.RUN_OUT)), Look.FACTOR);
        for (int w = 0; w < weeks; w++) {
            tab.number(row, WEEKS + w, hours.fullWeeks().get(j).get(w), Look.SHARE);
        }
    }

    /** The share of the hours around step j after which at least so many are left. */
    String share(int j, String least) {
        return "MAX(0,MIN(1,(" + at(2, j) + "-" + least + ")/" + facts.step() + "+0.5))";
    }

    int reserve(String heading) {
        int column = next++;
        tab.heads(top - 1, column, List.of(heading));
        return column;
    }

    int column(String heading, IntFunction<String> rule) {
        int column = reserve(heading);
        for (int j = 0; j <= EngineTab.STEPS; j++) {
            put(column, j, rule.apply(j));
        }
        return column;
    }

    void put(int column, int j, String formula) {
        tab.formula(top + j, column, formula, Look.FACTOR);
    }

    String at(int column, int j) {
        return tab.at(top + j, column).local();
    }

    String range(int column, int from, int to) {
        return tab.at(top + from, column).to(tab.at(top + to, column)).local();
    }

    String range(int column) {
        return range(column, 0, EngineTab.STEPS);
    }

    /** Adds the money of a flat of an assembly, by the weeks each step lies in. */
    void addFlat(ResolvedAssembly a, List<String> byWeek) {
        flatColumns.computeIfAbsent(
                a.id(),
                id -> column("a hit on " + id + " costs, tires left out", j -> {
                    StringBuilder sum = new StringBuilder(byWeek.get(0));
                    for (int w = 1; w < byWeek.size(); w++) {
                        sum.append("+" + at(WEEKS + w - 1, j) + "*(" + byWeek.get(w) + "-" + byWeek.get(0) + ")");
                    }
                    return sum.toString();
                }));
    }

    String flat(ResolvedAssembly a, int j) {
        Integer column = flatColumns.get(a.id());
        if (column == null) {
            throw new IllegalArgumentException("no flats of " + a.id());
        }
        return at(column, j);
    }
}
