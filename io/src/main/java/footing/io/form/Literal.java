package footing.io.form;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A decimal number and the unit behind it, if any. */
record Literal(BigDecimal number, String unit) {
    /** Digits and exponent are bounded, so that no number is slow to read. */
    static final String NUMBER = "[-+]?(?:\\d{1,30}(?:\\.\\d{0,30})?|\\.\\d{1,30})(?:[eE][-+]?\\d{1,3})?";

    private static final Pattern FORM = Pattern.compile("(" + NUMBER + ")[ \\t]*([^\\s\\d.,+-][^\\n]{0,20})?");

    static Optional<Literal> of(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        String unit = m.group(2) == null ? "" : m.group(2);
        return Optional.of(new Literal(new BigDecimal(m.group(1)), unit));
    }

    boolean isBare() {
        return unit.isEmpty();
    }

    double value() {
        return number.doubleValue();
    }

    /** The number as a percentage; the decimal point moves before rounding, so that 6.9 % is 0.069. */
    double percent() {
        return number.movePointLeft(2).doubleValue();
    }

    /** The number as plain text; only for one of moderate size. */
    String digits() {
        return Written.number(value());
    }
}
