package footing.io.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;

/**
 * Numbers rounded for a reader, the same in every locale: a point for decimals, a comma between thousands. Halves are
 * rounded to the even neighbor.
 */
public final class Figures {
    private static final double MOST_MINUTES = 3;
    private static final List<String> WORDS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Figures() {}

    /** Money over a life or a season: whole units. */
    public static String money(double x) {
        return rounded(x, 0, "#,##0");
    }

    /** Money without its sign. */
    public static String size(double x) {
        return money(Math.abs(x));
    }

    /** Money a month: with cents where it is small. */
    public static String monthly(double x) {
        return Math.abs(x) < 9.995 ? rate(x) : money(x);
    }

    /** Money per hour: with cents. */
    public static String rate(double x) {
        return rounded(x, 2, "#,##0.00");
    }

    /** A mean count: one decimal below ten, none above. */
    public static String count(double x) {
        return Math.abs(x) < 9.95 ? rounded(x, 1, "0.#") : money(x);
    }

    /** A mean count and what is counted: '1 flat', '2.3 flats'. */
    public static String counted(double x, String what) {
        String count = count(x);
        return count + " " + what + (count.equals("1") ? "" : "s");
    }

    /** A share in whole percent. */
    public static String percent(double share) {
        return rounded(100 * share, 0, "0") + " %";
    }

    /** A time: minutes up to three hours, then hours. */
    public static String time(double hours) {
        return hours < MOST_MINUTES ? money(60 * hours) + " min" : count(hours) + " h";
    }

    /** A whole number, in a word up to twelve. */
    public static String word(int n) {
        return n >= 0 && n < WORDS.size() ? WORDS.get(n) : money(n);
    }

    /** A measured value to so many decimals, without zeros at the end. */
    public static String decimals(double x, int decimals) {
        return rounded(x, decimals, decimals == 0 ? "0" : "0." + "#".repeat(decimals));
    }

    /** True if it is not zero once rounded to whole units. */
    public static boolean shows(double money) {
        return !money(money).equals("0");
    }

    private static String rounded(double x, int decimals, String pattern) {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
            return "?";
        }
        BigDecimal value = BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_EVEN);
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
