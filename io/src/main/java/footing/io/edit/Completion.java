package footing.io.edit;

import footing.core.fleet.Dimension;
import footing.core.fleet.Key;
import footing.io.form.Quantity;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The unit a person left out, where it can't be misread. A share typed without its percent sign may be meant as a
 * percentage or as a fraction, a time without its unit as minutes or as hours; if just one of the two lies within the
 * values the key takes, that one is meant: 14 for a share of at most 100 % is 14 %, but 0.14 stays as it is typed and
 * is refused with both readings named. Nothing is nothing in every unit. The values of a three-point are judged
 * together, so that 0.5 / 2 / 4 is in percent.
 */
final class Completion {
    private static final Pattern BARE = Pattern.compile("[-+]?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15})");
    private static final Pattern WITH_UNIT = Pattern.compile(BARE.pattern() + "[ \\t]*(%|[A-Za-z]{1,5})");

    private Completion() {}

    static boolean isBare(String text) {
        return BARE.matcher(text).matches();
    }

    /** The unit at the end of a number; empty if there is none. */
    static String unit(String text) {
        var m = WITH_UNIT.matcher(text.strip());
        return m.matches() ? m.group(1) : "";
    }

    static List<String> of(Key key, List<String> values) {
        boolean share = key.dimension() == Dimension.SHARE;
        if (!(share || key.dimension() == Dimension.TIME)
                || values.isEmpty()
                || !values.stream().allMatch(Completion::isBare)) {
            return values;
        }
        double[] typed = values.stream().mapToDouble(Double::parseDouble).toArray();
        if (share) {
            boolean percent = fits(key, typed, 0.01);
            return percent && (isZero(typed) || !fits(key, typed, 1)) ? with(values, "%") : values;
        }
        boolean minutes =
                fits(key, typed, Quantity.TIME.unit("min").orElseThrow().toOwn(1));
        boolean hours = fits(key, typed, 1);
        if (minutes == hours && !isZero(typed)) {
            return values;
        }
        return with(values, hours ? "h" : "min");
    }

    private static boolean fits(Key key, double[] values, double factor) {
        return IntStream.range(0, values.length).allMatch(i -> key.range().contains(values[i] * factor));
    }

    private static boolean isZero(double[] values) {
        return values.length == 1 && values[0] == 0;
    }

    private static List<String> with(List<String> values, String unit) {
        return values.stream().map(v -> v + " " + unit).toList();
    }
}
