package footing.io.records;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers of a sheet with the units people write beside them. */
final class Measured {
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?[0-9]+(?:\\.[0-9]*)?(?:[eE][+-]?[0-9]{1,3})?|\\.[0-9]+)\\s*(.*)");
    private static final Pattern THIRTY_SECONDS = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*/\\s*([0-9]+)\\s*(.*)");
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");
    private static final Pattern THOUSANDS = Pattern.compile("[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]+)?");
    private static final double INCH = 25.4;

    private Measured() {}

    record Amount(double value, String unit) {}

    /** A number and the letters behind it; a comma between thousands or for the point is refused with its mend. */
    static Amount amount(Column column, String text) throws BadCell {
        Matcher m = NUMBER.matcher(text);
        if (!m.matches()) {
            throw new BadCell(column, text, "is no number", "");
        }
        if (m.group(2).startsWith(",")) {
            String better = THOUSANDS.matcher(text).matches() ? text.replace(",", "") : text.replace(',', '.');
            throw new BadCell(
                    column, text, "a number is written with a point and nothing between thousands", "write " + better);
        }
        return new Amount(Double.parseDouble(m.group(1)), m.group(2).strip().toLowerCase(Locale.ROOT));
    }

    /** A number in one unit, which may stand behind it under several names. */
    static OptionalDouble plain(Column column, String text, double most, String... units) throws BadCell {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Amount amount = amount(column, text);
        if (!amount.unit.isEmpty() && !java.util.Arrays.asList(units).contains(amount.unit)) {
            throw new BadCell(
                    column, text, "the unit '" + amount.unit + "' doesn't fit here", "write the number alone");
        }
        return OptionalDouble.of(within(column, text, amount.value, most));
    }

    /** Minutes, of {@code 35}, {@code 35 min}, {@code 1.5 h} or {@code 1:45}. */
    static OptionalDouble minutes(String text, String headerUnit) throws BadCell {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Matcher clock = CLOCK.matcher(text);
        if (clock.matches()) {
            return OptionalDouble.of(60.0 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2)));
        }
        Amount amount = amount(Column.MINUTES, text);
        String unit = amount.unit.isEmpty() ? headerUnit.toLowerCase(Locale.ROOT) : amount.unit;
        double factor = switch (unit) {
            case "", "min", "mins", "minute", "minutes", "m" -> 1;
            case "h", "hr", "hrs", "hour", "hours" -> 60;
            default ->
                throw new BadCell(Column.MINUTES, text, "the unit '" + unit + "' is no time", "write 35 min or 1.5 h");
        };
        return OptionalDouble.of(within(Column.MINUTES, text, amount.value * factor, 100_000));
    }

    /** Money with or without a sign before it. */
    static OptionalDouble money(String text) throws BadCell {
        String bare = text.replaceFirst("^[\\p{Sc}]\\s*", "");
        return plain(Column.COST, bare, 1e7, "usd", "eur", "gbp", "cad", "aud");
    }

    /** A tread depth in millimeters, of {@code 9.5 mm}, {@code 12/32 in} or {@code 0.4 in}. */
    static OptionalDouble depth(String text, String headerUnit) throws BadCell {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Matcher fraction = THIRTY_SECONDS.matcher(text);
        double value;
        String unit;
        if (fraction.matches() && Double.parseDouble(fraction.group(2)) > 0) {
            value = Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2));
            unit = fraction.group(3).strip().toLowerCase(Locale.ROOT);
            unit = unit.isEmpty() ? "in" : unit;
        } else {
            Amount amount = amount(Column.DEPTH, text);
            value = amount.value;
            unit = amount.unit.isEmpty() ? headerUnit.toLowerCase(Locale.ROOT) : amount.unit;
        }
        double factor = switch (unit) {
            case "mm" -> 1;
            case "cm" -> 10;
            case "in", "inch", "inches", "\"" -> INCH;
            case "32nds", "/32", "/32 in", "32nds in" -> INCH / 32;
            case "" ->
                throw new BadCell(
                        Column.DEPTH, text, "a depth needs its unit", "write " + text + " mm or " + text + "/32 in");
            default -> throw new BadCell(Column.DEPTH, text, "the unit '" + unit + "' is no depth", "use mm or in");
        };
        return OptionalDouble.of(within(Column.DEPTH, text, value * factor, 100));
    }

    private static double within(Column column, String text, double value, double most) throws BadCell {
        if (!(value >= 0 && value <= most)) {
            throw new BadCell(column, text, "must lie between 0 and " + (long) most, "");
        }
        return value;
    }
}
