package footing.io.form;

import footing.core.fleet.Dimension;
import footing.core.fleet.Key;
import footing.core.fleet.Range;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says why a number doesn't fit its key and what would. */
final class AmountAdvice {
    private static final Pattern GROUPED = Pattern.compile("[$€£]?\\s?(\\d{1,3})((?:[,' _]\\d{3}){1,4})(\\.\\d{1,9})?");
    private static final Pattern COMMA = Pattern.compile("(\\d{1,9}),(\\d{1,9})(\\s*[^\\s\\d,]{0,9})");
    private static final Pattern SIGNED = Pattern.compile("[$€£¥]\\s?(\\d{1,12}(?:\\.\\d{1,9})?)");

    private AmountAdvice() {}

    static String notANumber(Key key, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.matches("[-+]?\\.(nan|inf)")) {
            return "not a number to reckon with";
        }
        return switch (key.dimension()) {
            case MONEY -> "money is a plain number in the case's currency";
            case COUNT -> "a plain number is due";
            case METER_HOURS -> "hours are due, as a plain number";
            case TIME -> "a time is a number with its unit";
            case SHARE -> "a share is a number with a percent sign";
        };
    }

    /** What the writer most likely meant. */
    static String guess(Key key, Node.Scalar scalar) {
        String text = scalar.text();
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches()) {
            String rest = grouped.group(3) == null ? "" : grouped.group(3);
            return "try: " + grouped.group(1) + grouped.group(2).replaceAll("\\D", "") + rest;
        }
        Matcher comma = COMMA.matcher(text);
        if (comma.matches()) {
            return "try: " + comma.group(1) + "." + comma.group(2) + comma.group(3);
        }
        Matcher signed = SIGNED.matcher(text);
        return "try: " + (signed.matches() ? signed.group(1) : NumberForm.example(key));
    }

    static String wrongForm(Key key, Literal literal) {
        return switch (key.dimension()) {
            case MONEY -> literal.isBare() ? "a number stands without quotes" : notANumber(key, "");
            case COUNT -> literal.isBare() ? "a number stands without quotes" : "a plain number is due, without a unit";
            case METER_HOURS ->
                literal.isBare() ? "a number stands without quotes" : "hours take no unit, or one of " + times();
            case TIME -> literal.isBare() ? "a time needs its unit" : "not a unit of time; " + times() + " would be";
            case SHARE -> literal.isBare() ? "a share needs its percent sign" : "a share takes a percent sign alone";
        };
    }

    static String rightForm(Key key, Literal literal) {
        String digits = Double.isFinite(literal.value()) && Math.abs(literal.value()) < 1e15 ? literal.digits() : "";
        if (digits.isEmpty()) {
            return "try: " + NumberForm.example(key);
        }
        return switch (key.dimension()) {
            case MONEY, COUNT, METER_HOURS -> "try: " + digits;
            case TIME -> time(key, literal, digits);
            case SHARE -> share(literal, digits);
        };
    }

    /** A bare number of hours may also be meant as minutes; both are offered where the difference can't be told. */
    private static String time(Key key, Literal literal, String digits) {
        if (!literal.isBare()) {
            return literal.unit().startsWith("d")
                    ? "try: hours of route time, such as " + Written.number(literal.value() * 9) + " h"
                    : "try: " + digits + " min, " + digits + " h";
        }
        boolean mostlyMinutes = key == Key.DELAY || key == Key.CHECK || literal.value() > 24;
        return mostlyMinutes
                ? "try: " + digits + " min, " + digits + " h"
                : "try: " + digits + " h, " + Written.number(literal.value() * 60) + " min";
    }

    private static String share(Literal literal, String digits) {
        double x = literal.value();
        boolean fraction = literal.isBare() && x > 0 && x <= 1;
        String percent = Written.number(x * 100) + " %";
        return "try: " + (fraction ? percent + (x == 1 ? ", " + digits + " %" : "") : digits + " %");
    }

    static String range(Amount amount, Range range) {
        String least = amount.write(range.least());
        String most = amount.write(range.most());
        String from = range.open() ? "above " + least + ", up to " : "from " + least + " to ";
        return "try: " + (range.whole() ? "a whole number " : "a value ") + from + most;
    }

    private static String times() {
        return Quantity.TIME.unitNames();
    }

    /** The dimension in words, for a schema. */
    static String words(Dimension dimension) {
        return switch (dimension) {
            case MONEY -> "money in the case's currency";
            case COUNT -> "a count";
            case METER_HOURS -> "operating hours";
            case TIME -> "a time with its unit";
            case SHARE -> "a share with its percent sign";
        };
    }
}
