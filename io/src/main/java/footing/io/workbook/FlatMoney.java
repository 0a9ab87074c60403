package footing.io.workbook;

import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import java.util.ArrayList;
import java.util.List;

/**
 * What a flat of each fix costs on average, in ordinary weeks and in each of the full ones. The hour of the day is any,
 * so what is left of the route day is even between nothing and all of it; the averages over it are worked out in full.
 */
final class FlatMoney {
    private static final String AFTER_HOURS = "2";

    private final Tab tab;
    private final RulesTab rules;
    private final Averages averages;
    private final MachineCells cells;
    private final ResolvedCrew crew;
    private final int top;
    private final int weeks;
    private final int summary;
    private final int width;

    FlatMoney(Tab tab, RulesTab rules, Averages averages, MachineCells cells, int top) {
        this.tab = tab;
        this.rules = rules;
        this.averages = averages;
        this.cells = cells;
        this.top = top;
        crew = cells.machine().crew();
        weeks = 1 + crew.fullWeeks().size();
        width = 5 + weeks;
        summary = top + RulesTab.AVERAGE + 4;
    }

    int bottom() {
        return summary + crew.fixes().size() + 2;
    }

    static List<Input> unsure(ResolvedMachine m) {
        List<Input> inputs = new ArrayList<>();
        for (int f = 0; f < m.crew().fixes().size(); f++) {
            inputs.add(new Input(Key.DELAY, m.crew().id(), Integer.toString(f)));
        }
        inputs.add(Input.of(Key.MAKE_UP_LATER, m.crew().id()));
        for (int w = 0; w < m.crew().fullWeeks().size(); w++) {
            inputs.add(new Input(Key.FULL_LATER, m.crew().id(), Integer.toString(w)));
        }
        return inputs;
    }

    void write() {
        tab.text(top, 0, "One flat, by how long it takes (hours; crew-hours pushed out of their place)", Look.STRONG);
        for (int f = 0; f < crew.fixes().size(); f++) {
            fix(f);
        }
        summaryHeads();
        for (int f = 0; f < crew.fixes().size(); f++) {
            sum(f);
        }
    }

    private int first(int fix) {
        return 1 + fix * width;
    }

    private void fix(int f) {
        List<String> heads = new ArrayList<>(List.of(
                crew.fixes().get(f).name() + ": takes", "not mended the same evening", "from", "to", "after hours"));
        for (int w = 0; w < weeks; w++) {
            heads.add(w == 0 ? "done today in slack" : "done today, full weeks " + w);
        }
        tab.heads(top + 1, first(f), heads);
        for (int i = 0; i < RulesTab.AVERAGE; i++) {
            point(f, i, top + 2 + i);
        }
    }

    private String displacedPerHour(int f) {
        return "(" + cells.own(Key.CREW_OUTPUT) + "*(1-" + cells.fix(Key.OUTPUT, f) + "))";
    }

    private void point(int f, int i, int row) {
        int c = first(f);
        String day = cells.crew(Key.DAY);
        String d = tab.formula(
                        row, c, averages.at(new Input(Key.DELAY, crew.id(), Integer.toString(f)), i), Look.FACTOR)
                .local();
        String whole = tab.formula(
                        row,
                        c + 1,
                        "MAX(0,MIN(1,(" + d + "-" + AFTER_HOURS + ")/" + day + "))+MAX(0,1-" + d + "/" + day + ")",
                        Look.FACTOR)
                .local();
        String lo = tab.formula(row, c + 2, "MIN(MAX(0," + d + "-" + AFTER_HOURS + ")," + day + ")", Look.FACTOR)
                .local();
        String hi = tab.formula(row, c + 3, "MIN(" + d + "," + day + ")", Look.FACTOR)
                .local();
        tab.formula(row, c + 4, "((" + d + "-" + lo + ")^2-(" + d + "-" + hi + ")^2)/2/" + day, Look.FACTOR);
        for (int w = 0; w < weeks; w++) {
            String per = displacedPerHour(f);
            String s = slack(w);
            String today = whole + "*MIN(" + per + "*" + d + "," + s + ")+(" + upTo(per, s, hi) + "-" + upTo(per, s, lo)
                    + ")/" + day;
            tab.formula(row, c + 5 + w, today, Look.FACTOR);
        }
    }

    private String slack(int week) {
        return week == 0
                ? cells.crew(Key.MAKE_UP_TODAY)
                : cells.cells().likely(new Input(Key.FULL_TODAY, crew.id(), Integer.toString(week - 1)));
    }

    /** Integral of min(per x R, s) over R from 0. */
    private static String upTo(String per, String s, String r) {
        return "IF(" + per + "*" + r + "<=" + s + "," + per + "*" + r + "^2/2," + s + "*" + r + "-" + s + "^2/2/" + per
                + ")";
    }

    private void summaryHeads() {
        List<String> heads = new ArrayList<>(List.of("fix", "pushed back, crew-hours", "after hours, one person"));
        for (int w = 0; w < weeks; w++) {
            String when = w == 0 ? "" : ", full weeks " + w;
            heads.addAll(List.of("made up" + when, "lost" + when, "crew time and lost work" + when));
        }
        tab.heads(summary, 0, 1, heads);
    }

    private void sum(int f) {
        int row = summary + 1 + f;
        tab.text(row, 0, crew.fixes().get(f).name());
        String per = displacedPerHour(f);
        int c = first(f);
        String day = cells.crew(Key.DAY);
        String down = "(" + weighted(c + 1, c) + "+(" + weighted(c + 3, c + 3) + "-" + weighted(c + 2, c + 2) + ")/2/"
                + day + ")";
        String displaced = tab.formula(row, 1, per + "*" + down, Look.FACTOR).local();
        String after = tab.formula(row, 2, weighted(c + 4), Look.FACTOR).local();
        String overtime = cells.hour() + "*(1+" + cells.crew(Key.OVERTIME_PREMIUM) + ")";
        for (int w = 0; w < weeks; w++) {
            String today = weighted(c + 5 + w);
            String later = averages.mean(
                    w == 0
                            ? Input.of(Key.MAKE_UP_LATER, crew.id())
                            : new Input(Key.FULL_LATER, crew.id(), Integer.toString(w - 1)));
            int at = 3 + 3 * w;
            String madeUp = tab.formula(row, at, today + "+(" + displaced + "-" + today + ")*" + later, Look.FACTOR)
                    .local();
            String lost = tab.formula(row, at + 1, displaced + "-" + madeUp, Look.FACTOR)
                    .local();
            tab.formula(
                    row,
                    at + 2,
                    "(" + madeUp + "*" + cells.crew(Key.PEOPLE) + "+" + after + ")*" + overtime + "+" + lost + "*"
                            + cells.crew(Key.BILLING) + "*(1-" + cells.crew(Key.VARIABLE_COST) + ")",
                    Look.MONEY);
        }
    }

    private String column(int column) {
        return tab.at(top + 2, column)
                .to(tab.at(top + 1 + RulesTab.AVERAGE, column))
                .local();
    }

    private String weighted(int... factors) {
        StringBuilder product = new StringBuilder("SUMPRODUCT(" + rules.weights());
        for (int c : factors) {
            product.append(',').append(column(c));
        }
        return product.append(')').toString();
    }

    /** Crew time and lost work of a flat, before tax. */
    String money(int fix, int week) {
        return tab.at(summary + 1 + fix, 5 + 3 * week).local();
    }
}
