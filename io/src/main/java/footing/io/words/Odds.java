package footing.io.words;

/**
 * A chance as people say it. Futures are only as good as what was stated, so that nothing is ever called surer than
 * nineteen in twenty.
 */
public final class Odds {
    private static final double MOST = 0.95;
    private static final double LEAST = 0.05;

    private Odds() {}

    /** In a sentence: '7 in 10', 'better than 19 in 20'. */
    public static String sentence(double chance) {
        if (chance > MOST) {
            return "better than 19 in 20";
        }
        return chance < LEAST ? "less than 1 in 20" : about(chance, "about half");
    }

    /** In a column of a table, as short as can be. */
    public static String column(double chance) {
        if (chance > MOST) {
            return ">19 in 20";
        }
        return chance < LEAST ? "<1 in 20" : about(chance, "even odds");
    }

    private static String about(double chance, String even) {
        if (!(chance >= 0 && chance <= 1)) {
            return "?";
        }
        long tenths = Math.min(9, Math.max(1, Math.round(10 * chance)));
        return tenths == 5 ? even : tenths + " in 10";
    }
}
