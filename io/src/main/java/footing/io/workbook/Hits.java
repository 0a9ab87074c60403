package footing.io.workbook;

import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedCrew;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A row for each assembly: the share of the hits on it that ruin its tire, and what a hit costs by the week it falls in. */
final class Hits {
    private final Tab tab;
    private final MachineCells cells;
    private final Averages averages;
    private final List<ResolvedCrew.ResolvedFix> fixes;
    private final int weeks;
    private final Map<String, Integer> rows = new HashMap<>();
    private int top;

    Hits(Tab tab, MachineCells cells, Averages averages) {
        this.tab = tab;
        this.cells = cells;
        this.averages = averages;
        fixes = cells.machine().crew().fixes();
        weeks = 1 + cells.machine().crew().fullWeeks().size();
    }

    void heads(int row) {
        top = row;
        List<String> heads = new ArrayList<>(List.of("assembly", "hits that ruin it"));
        for (int w = 0; w < weeks; w++) {
            heads.add(w == 0 ? "a hit costs" : "a hit costs, full weeks " + w);
        }
        tab.heads(row, 0, 1, heads);
    }

    boolean knows(ResolvedAssembly a) {
        return rows.containsKey(a.id());
    }

    /** Adds an assembly; returns what a hit on it costs, tires left out, by week. */
    List<String> add(ResolvedAssembly a, FlatMoney money) {
        int row = top + 1 + rows.size();
        rows.put(a.id(), row);
        tab.text(row, 0, a.id());
        StringBuilder ruins = new StringBuilder("0");
        for (int f = 0; f < fixes.size(); f++) {
            ruins.append(fixes.get(f).replacesTire() ? "+" + often(a, f) : "");
        }
        tab.formula(row, 1, ruins.toString(), Look.FACTOR);
        List<String> byWeek = new ArrayList<>();
        for (int w = 0; w < weeks; w++) {
            StringBuilder sum = new StringBuilder("0");
            for (int f = 0; f < fixes.size(); f++) {
                sum.append("+" + often(a, f) + "*(" + cells.fix(Key.FIX_COST, f) + "+" + money.money(f, w) + ")");
            }
            byWeek.add(tab.formula(row, 2 + w, sum.toString(), Look.MONEY).local());
        }
        return byWeek;
    }

    /** The share of all hits that are flats of an assembly with this fix. */
    private String often(ResolvedAssembly a, int f) {
        ResolvedCrew.ResolvedFix fix = fixes.get(f);
        String taken = fix.replacesTire()
                ? averages.mean(Input.of(Key.RUIN_FACTOR, a.id()))
                : fix.sealable()
                        ? averages.mean(Input.of(Key.FLAT_FACTOR, a.id()))
                        : a.kind().holdsAir() ? "1" : "0";
        return cells.fix(Key.FIX_SHARE, f) + "*" + taken;
    }

    String ruined(ResolvedAssembly a) {
        Integer row = rows.get(a.id());
        if (row == null) {
            throw new IllegalArgumentException("no hits of " + a.id());
        }
        return tab.at(row, 1).local();
    }
}
