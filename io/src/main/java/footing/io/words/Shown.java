package footing.io.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How measured values are shown.
 *
 * @param words what is measured
 * @param factor of a value in SI units, in the unit shown
 * @param unit empty for a count
 */
public record Shown(String words, double factor, String unit) {
    /** Three digits with the unit; no more are known of a run. */
    public String value(double si) {
        return unit.isEmpty() ? number(si) : number(si) + " " + unit;
    }

    /** Three digits without the unit. */
    public String number(double si) {
        return digits(si * factor);
    }

    /** Three digits of a value in whatever unit. */
    public static String digits(double x) {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
            return "?";
        }
        BigDecimal rounded = new BigDecimal(x).round(new MathContext(3, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
