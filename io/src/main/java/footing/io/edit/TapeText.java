package footing.io.edit;

import footing.core.fleet.Measure;
import footing.core.fleet.Physical;
import footing.io.form.Quantity;
import footing.io.form.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody with a tape in hand types for a {@link Measure}, as a case file takes it: a missing unit is that of the
 * case, {@code 3 1/4} is 3.25 in, and an inch mark is an inch. A thread pitch is in millimeters whatever the case shows.
 * What can't be read so is left as it was typed, to be refused with its reason.
 */
public final class TapeText {
    private static final Pattern BARE = Pattern.compile("[-+]?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15})");
    private static final Pattern TAPE =
            Pattern.compile("([-+]?)(?:(\\d{1,4})[ -])?(\\d{1,3})/(2|4|8|16|32|64)(?: ?in)?");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00A0\\u2007\\u2009\\u202F]+");
    private static final Pattern INCH_MARK = Pattern.compile(" ?(?:\"|\u2033|\u201D)$");

    private TapeText() {}

    /** The unit of a bare number; empty where none is due. */
    public static String unit(Measure measure, boolean si) {
        if (measure == Measure.THREAD_PITCH) {
            return "mm";
        }
        return switch (measure.physical()) {
            case LENGTH, SHIFT -> si ? "mm" : "in";
            case MASS -> si ? "kg" : "lb";
            case PRESSURE -> si ? "kPa" : "psi";
            case SPEED -> si ? "km/h" : "mph";
            case STIFFNESS -> si ? "kN/m" : "lb/in";
            case SHARE -> "%";
            case NUMBER -> "";
        };
    }

    /** The typed text with its unit. */
    public static String whole(Measure measure, String typed, boolean si) {
        String text = BLANKS.matcher(typed).replaceAll(" ").strip();
        boolean length = measure.physical() == Physical.LENGTH || measure.physical() == Physical.SHIFT;
        if (length) {
            text = INCH_MARK.matcher(text).replaceFirst(" in");
            Matcher tape = TAPE.matcher(text);
            if (tape.matches()) {
                return inches(tape);
            }
        }
        String unit = unit(measure, si);
        // 0.34 may be a third or a third of a percent.
        boolean clear = measure.physical() != Physical.SHARE || !text.matches("[-+]?0?\\.\\d+");
        return BARE.matcher(text).matches() && !unit.isEmpty() && clear ? text + " " + unit : text;
    }

    private static String inches(Matcher tape) {
        BigDecimal part = new BigDecimal(tape.group(3)).divide(new BigDecimal(tape.group(4)), MathContext.DECIMAL64);
        BigDecimal whole = tape.group(2) == null ? BigDecimal.ZERO : new BigDecimal(tape.group(2));
        String sign = tape.group(1).equals("-") ? "-" : "";
        return sign + whole.add(part).stripTrailingZeros().toPlainString() + " in";
    }

    /** A value in SI units as one would type it. */
    public static String written(Measure measure, double value, boolean si) {
        String unit = unit(measure, si);
        return switch (measure.physical()) {
            case NUMBER -> Written.number(value);
            case SHARE -> Written.number(100 * value) + " %";
            case LENGTH, SHIFT -> in(Quantity.LENGTH, unit, value);
            case MASS -> in(Quantity.MASS, unit, value);
            case PRESSURE -> in(Quantity.PRESSURE, unit, value);
            case SPEED -> in(Quantity.SPEED, unit, value);
            case STIFFNESS -> in(Quantity.STIFFNESS, unit, value);
        };
    }

    private static String in(Quantity quantity, String unit, double value) {
        return Written.number(quantity.unit(unit).orElseThrow().fromOwn(value)) + " " + unit;
    }
}
