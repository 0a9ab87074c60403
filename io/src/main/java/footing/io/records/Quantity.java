package footing.io.records;

import footing.core.records.Event;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many: flats counted together, or tires and sets bought. {@code about 5} is a count from memory. A bare number of
 * a purchase is tires, as they are sold; two are a set.
 *
 * @param number in flats or in sets; absent if nothing stands there
 */
record Quantity(OptionalDouble number, boolean about) {
    static final int TIRES_A_SET = 2;
    private static final Quantity NONE = new Quantity(OptionalDouble.empty(), false);
    private static final Pattern ABOUT = Pattern.compile(
            "(?:about|around|roughly|ca\\.?|approx\\.?|~|≈)\\s*(.*)|(.*?)\\s*(?:or so|or thereabouts|\\?)");
    private static final double MOST = 10_000;

    static Quantity of(Event event, String text, String headerUnit) throws BadCell {
        if (text.isEmpty()) {
            return NONE;
        }
        Matcher about = ABOUT.matcher(text.toLowerCase(Locale.ROOT));
        boolean remembered = about.matches();
        String bare = !remembered ? text : about.group(1) != null ? about.group(1) : about.group(2);
        Measured.Amount amount = Measured.amount(Column.QUANTITY, bare);
        String unit = amount.unit().isEmpty() ? headerUnit.toLowerCase(Locale.ROOT) : amount.unit();
        double number = event == Event.BOUGHT ? sets(text, amount.value(), unit) : flats(text, amount.value(), unit);
        return new Quantity(OptionalDouble.of(number), remembered);
    }

    private static double sets(String text, double value, String unit) throws BadCell {
        if (!(value > 0 && value <= MOST)) {
            throw new BadCell(Column.QUANTITY, text, "must be above 0 and at most " + (long) MOST, "");
        }
        return switch (unit) {
            case "set", "sets", "pair", "pairs" -> value;
            case "", "tire", "tires", "pc", "pcs", "each", "ea", "wheels", "wheel" -> value / TIRES_A_SET;
            default ->
                throw new BadCell(
                        Column.QUANTITY, text, "'" + unit + "' is neither tires nor sets", "write 4 tires or 2 sets");
        };
    }

    private static double flats(String text, double value, String unit) throws BadCell {
        if (!(value >= 1 && value <= MOST && value == Math.rint(value))) {
            throw new BadCell(Column.QUANTITY, text, "a number of flats is whole and at least 1", "");
        }
        if (!unit.isEmpty() && !unit.startsWith("flat")) {
            throw new BadCell(Column.QUANTITY, text, "'" + unit + "' are no flats", "write the number alone");
        }
        return value;
    }
}
