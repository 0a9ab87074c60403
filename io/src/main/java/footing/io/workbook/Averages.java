package footing.io.workbook;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Dimension;
import footing.core.fleet.Input;
import java.util.LinkedHashMap;
import java.util.Map;

/** What is uncertain of a machine, a column each: the three values, the metalog through them, its values and average. */
final class Averages {
    private static final int LOW = 1;
    private static final int CENTER = 4;
    private static final int NODES = 7;
    private static final int MEAN = NODES + RulesTab.AVERAGE;
    static final int HEIGHT = MEAN + 3;

    private final Tab tab;
    private final RulesTab rules;
    private final Cells cells;
    private final int top;
    private final Map<Input, Integer> columns = new LinkedHashMap<>();

    Averages(Tab tab, RulesTab rules, Cells cells, int top) {
        this.tab = tab;
        this.rules = rules;
        this.cells = cells;
        this.top = top;
        String[] labels = {"", "low", "likely", "high", "center", "slope", "skew"};
        for (int i = 1; i < labels.length; i++) {
            tab.text(top + i, 0, labels[i]);
        }
        for (int i = 0; i < RulesTab.AVERAGE; i++) {
            tab.formula(top + NODES + i, 0, "\"at level \"&TEXT(" + rules.level(i) + ",\"0.000\")", Look.TEXT);
        }
        tab.text(top + MEAN, 0, "average", Look.STRONG);
        tab.text(top + MEAN + 1, 0, "average of its square", Look.STRONG);
    }

    /** Adds a column; a second time the same is no other one. */
    void add(Input input, Spread value, String name) {
        if (columns.containsKey(input)) {
            return;
        }
        int column = columns.size() + 1;
        columns.put(input, column);
        tab.text(top, column, name, Look.HEAD);
        boolean share = input.key().dimension() == Dimension.SHARE;
        String likely = tab.formula(top + LOW + 1, column, cells.likely(input), Look.FACTOR)
                .local();
        if (value instanceof Metalog) {
            String low = tab.formula(top + LOW, column, cells.low(input), Look.FACTOR)
                    .local();
            String high = tab.formula(top + LOW + 2, column, cells.high(input), Look.FACTOR)
                    .local();
            metalog(column, low, likely, high, share);
        }
        for (int i = 0; i < RulesTab.AVERAGE; i++) {
            tab.formula(
                    top + NODES + i,
                    column,
                    value instanceof Metalog
                            ? value(
                                    column,
                                    rules.level(i).toString(),
                                    rules.logit(i).toString(),
                                    share)
                            : likely,
                    Look.FACTOR);
        }
        String nodes = nodes(column).local();
        tab.formula(top + MEAN, column, "SUMPRODUCT(" + rules.weights() + "," + nodes + ")", Look.FACTOR);
        tab.formula(
                top + MEAN + 1, column, "SUMPRODUCT(" + rules.weights() + "," + nodes + "," + nodes + ")", Look.FACTOR);
    }

    private void metalog(int column, String low, String likely, String high, boolean share) {
        String l = transformed(low, share);
        String m = transformed(likely, share);
        String h = transformed(high, share);
        tab.formula(top + CENTER, column, m, Look.FACTOR);
        tab.formula(top + CENTER + 1, column, "(" + h + "-" + l + ")/(2*LN(9))", Look.FACTOR);
        tab.formula(top + CENTER + 2, column, "(" + h + "+" + l + "-2*" + m + ")/(0.8*LN(9))", Look.FACTOR);
    }

    static String transformed(String x, boolean share) {
        return share ? "LN(" + x + "/(1-" + x + "))" : "LN(" + x + ")";
    }

    private String value(int column, String level, String logit, boolean share) {
        String z = quantile(parameter(column, 0), parameter(column, 1), parameter(column, 2), level, logit);
        return share ? "1/(1+EXP(-(" + z + ")))" : "EXP(" + z + ")";
    }

    static String quantile(String center, String slope, String skew, String level, String logit) {
        return center + "+(" + slope + "+" + skew + "*(" + level + "-0.5))*" + logit;
    }

    private String parameter(int column, int which) {
        return tab.at(top + CENTER + which, column).local();
    }

    private At nodes(int column) {
        return tab.at(top + NODES, column).to(tab.at(top + MEAN - 1, column));
    }

    private int column(Input input) {
        Integer column = columns.get(input);
        if (column == null) {
            throw new IllegalArgumentException("not averaged: " + input.path());
        }
        return column;
    }

    /** Its value at point i. */
    String at(Input input, int i) {
        return tab.at(top + NODES + i, column(input)).local();
    }

    String mean(Input input) {
        return tab.at(top + MEAN, column(input)).local();
    }

    String meanSquare(Input input) {
        return tab.at(top + MEAN + 1, column(input)).local();
    }
}
