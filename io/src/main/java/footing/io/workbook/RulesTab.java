package footing.io.workbook;

import java.util.List;

/**
 * The points at which the engines look at what is uncertain: for averages 21 points evenly spaced in ln(y/(1-y)) with
 * their weights, for lives 20 levels alike in chance, for what is unsure of all lives at once the three points of the
 * Gauss-Hermite rule.
 */
final class RulesTab {
    static final int AVERAGE = 21;
    static final int LIVES = 20;
    static final int UNSURE = 3;
    private static final int FIRST = 4;
    private static final double LEAST = 0.005;
    private static final double[] HERMITE = {-Math.sqrt(3), 0, Math.sqrt(3)};
    private static final double[] HERMITE_WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};

    private final Tab tab;

    RulesTab(Tab tab) {
        this.tab = tab;
    }

    void write() {
        tab.text(0, 0, "Points at which the engines look", Look.TITLE);
        tab.note(
                1,
                7,
                "Each low / likely / high is a metalog distribution, cut off at one in two hundred on either side as in the"
                        + " simulation. An average over it is the sum of weight x value at these points.");
        tab.heads(
                FIRST - 1,
                0,
                List.of("ln(y/(1-y))", "level y", "weight", "", "level of a life", "", "spread", "weight"));
        double most = Math.log((1 - LEAST) / LEAST);
        double step = 2 * most / (AVERAGE - 1);
        String all = tab.at(FIRST + AVERAGE + 1, 2).local();
        for (int i = 0; i < AVERAGE; i++) {
            int row = FIRST + i;
            String z = tab.number(row, 0, -most + i * step, Look.FACTOR).local();
            String y = tab.formula(row, 1, "1/(1+EXP(-" + z + "))", Look.FACTOR).local();
            boolean end = i == 0 || i == AVERAGE - 1;
            String raw = y + "*(1-" + y + ")*" + step + (end ? "/2+" + LEAST : "");
            tab.formula(row, 2, "(" + raw + ")/" + all, Look.FACTOR);
        }
        double sum = 0;
        for (int i = 0; i < AVERAGE; i++) {
            double y = 1 / (1 + Math.exp(most - i * step));
            boolean end = i == 0 || i == AVERAGE - 1;
            sum += y * (1 - y) * step * (end ? 0.5 : 1) + (end ? LEAST : 0);
        }
        tab.text(FIRST + AVERAGE + 1, 0, "their sum before they were made to add up to 1");
        tab.number(FIRST + AVERAGE + 1, 2, sum, Look.FACTOR);
        for (int i = 0; i < LIVES; i++) {
            tab.number(FIRST + i, 4, (i + 0.5) / LIVES, Look.FACTOR);
        }
        for (int i = 0; i < UNSURE; i++) {
            tab.number(FIRST + i, 6, HERMITE[i], Look.FACTOR);
            tab.number(FIRST + i, 7, HERMITE_WEIGHTS[i], Look.FACTOR);
        }
        tab.widths(0, 12, 12, 12, 3, 12, 3, 12, 12);
        tab.freeze(FIRST, 0);
    }

    At logit(int i) {
        return tab.at(FIRST + i, 0);
    }

    At level(int i) {
        return tab.at(FIRST + i, 1);
    }

    At weights() {
        return tab.at(FIRST, 2).to(tab.at(FIRST + AVERAGE - 1, 2));
    }

    At lifeLevel(int i) {
        return tab.at(FIRST + i, 4);
    }

    At unsure(int i) {
        return tab.at(FIRST + i, 6);
    }

    At unsureWeight(int i) {
        return tab.at(FIRST + i, 7);
    }
}
