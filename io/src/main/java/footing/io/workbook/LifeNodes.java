package footing.io.workbook;

import footing.core.chance.Metalog;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import java.util.List;

/**
 * Twenty lives of a set, alike in chance: of a new one, or of the one on the machine, given that it has lasted so far.
 * For the latter the level reached by now is found by Newton steps.
 */
final class LifeNodes {
    private static final int NEWTON = 12;
    private static final int LEVEL = 7 + NEWTON;
    static final int FIRST = LEVEL + 2;
    static final int HEIGHT = FIRST + RulesTab.LIVES + 1;
    static final int WIDTH = 4;

    private final Facts facts;
    private final Tab tab;
    private final int top;
    private final int column;
    private final ResolvedAssembly assembly;
    private final Position position;
    private final boolean first;

    LifeNodes(Facts facts, int top, int column, ResolvedAssembly assembly, Position position, boolean first) {
        this.facts = facts;
        tab = facts.tab();
        this.top = top;
        this.column = column;
        this.assembly = assembly;
        this.position = position;
        this.first = first;
    }

    static void labels(Tab tab, int top) {
        String[] labels = {"", "center", "slope", "skew", "scale", "worn by now", "level of that, on the way"};
        for (int i = 1; i < labels.length; i++) {
            tab.text(top + i, 0, labels[i]);
        }
        tab.text(top + LEVEL, 0, "level of that", Look.STRONG);
        tab.text(top + FIRST, 0, "lives");
    }

    void write(String name, int node) {
        tab.text(top, column, name, Look.HEAD);
        boolean uncertain = assembly.life() instanceof Metalog;
        Input life = Input.of(Key.LIFE, assembly.id());
        Cells cells = facts.cells().cells();
        if (uncertain) {
            String l = "LN(" + cells.low(life) + ")";
            String m = "LN(" + cells.likely(life) + ")";
            String h = "LN(" + cells.high(life) + ")";
            tab.formula(top + 1, column, m, Look.FACTOR);
            tab.formula(top + 2, column, "(" + h + "-" + l + ")/(2*LN(9))", Look.FACTOR);
            tab.formula(top + 3, column, "(" + h + "+" + l + "-2*" + m + ")/(0.8*LN(9))", Look.FACTOR);
        }
        String unsure = assembly.lifeUnsure() > 0
                ? "*EXP(" + facts.cells().assembly(Key.LIFE_UNSURE, assembly.id()) + "*"
                        + facts.rules().unsure(node) + ")"
                : "";
        tab.formula(top + 4, column, facts.cells().own(Key.GROUND_WEAR) + unsure, Look.FACTOR);
        tab.formula(top + 5, column, first ? facts.cells().worn(position) : "0", Look.NUMBER);
        level(uncertain);
        tab.heads(top + FIRST - 1, column, List.of("life", "still lasts", "ruin behind it", "not ruined before worn"));
        for (int i = 0; i < RulesTab.LIVES; i++) {
            life(i, uncertain, cells.likely(life));
        }
    }

    private String p(int which) {
        return tab.at(top + which, column).local();
    }

    private void level(boolean uncertain) {
        if (!first || !uncertain) {
            tab.number(top + LEVEL, column, 0, Look.FACTOR);
            return;
        }
        String target = "LN(MAX(0.001," + p(5) + ")/" + p(4) + ")";
        tab.formula(top + 6, column, "MAX(-12,MIN(12,(" + target + "-" + p(1) + ")/" + p(2) + "))", Look.FACTOR);
        for (int i = 1; i < NEWTON; i++) {
            String z = p(5 + i);
            String y = "(1/(1+EXP(-" + z + ")))";
            String slope = "(" + p(2) + "+" + p(3) + "*(" + y + "-0.5)+" + p(3) + "*" + y + "*(1-" + y + ")*" + z + ")";
            String error = "(" + Averages.quantile(p(1), p(2), p(3), y, z) + "-" + target + ")";
            tab.formula(top + 6 + i, column, "MAX(-12,MIN(12," + z + "-" + error + "/" + slope + "))", Look.FACTOR);
        }
        tab.formula(top + LEVEL, column, "IF(" + p(5) + ">0,1/(1+EXP(-" + p(5 + NEWTON) + ")),0)", Look.FACTOR);
    }

    private void life(int i, boolean uncertain, String stated) {
        int row = top + FIRST + i;
        String life;
        if (uncertain) {
            String y = "MIN(0.995," + p(LEVEL) + "+(1-" + p(LEVEL) + ")*"
                    + facts.rules().lifeLevel(i) + ")";
            String z = Averages.quantile(p(1), p(2), p(3), y, "LN(" + y + "/(1-" + y + "))");
            life = "EXP(" + z + ")*" + p(4);
        } else {
            life = stated + "*" + p(4);
        }
        String l = tab.formula(row, column, life, Look.NUMBER).local();
        tab.formula(row, column + 1, "MAX(0," + l + "-" + p(5) + ")", Look.NUMBER);
        if (assembly.kind().holdsAir()) {
            String rho = ruinsPerHour();
            String at = p(5) + "/" + l;
            String behind = tab.formula(
                            row,
                            column + 2,
                            "IF(" + at + ">0.5," + rho + "*" + l + "*" + since(at) + ",0)",
                            Look.FACTOR)
                    .local();
            String th = facts.unsureFlats();
            String all = rho + "*" + l + "*(0.5+" + facts.slope() + "/8)";
            tab.formula(
                    row, column + 3, "MAX(1,1+" + th + "*(" + all + "-" + behind + "))^(-1/" + th + ")", Look.FACTOR);
        } else {
            tab.number(row, column + 2, 0, Look.FACTOR);
            tab.number(row, column + 3, 1, Look.FACTOR);
        }
    }

    /** Ruins an hour of an average tire. */
    String ruinsPerHour() {
        return facts.constant(
                assembly.id() + ": ruins an hour of a middling set",
                facts.flatsPerHour(position) + "*" + facts.ruined(assembly));
    }

    /** Exposure to ruin since half of the life, over the life, at an age share beyond one half. */
    String since(String share) {
        return "((" + share + "-0.5)+" + facts.slope() + "/2*(" + share + "-0.5)^2)";
    }

    String worn() {
        return p(5);
    }

    /** The range of one of the four columns. */
    String range(int which) {
        return tab.at(top + FIRST, column + which)
                .to(tab.at(top + FIRST + RulesTab.LIVES - 1, column + which))
                .local();
    }
}
