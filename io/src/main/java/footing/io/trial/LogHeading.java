package footing.io.trial;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which columns of a log hold the time and the values, and in what units, as far as its heading says.
 *
 * @param columns the time first
 * @param timeUnit seconds in one of the time's unit; null if not stated
 * @param unit of the values; null if not stated
 */
record LogHeading(
        List<Integer> columns,
        @Nullable Double timeUnit,
        @Nullable String unit) {
    private static final Pattern UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]{1,12})\\s*[)\\]]\\s*$");
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(?:\\d{1,25}(?:[.]\\d{0,25})?|[.]\\d{1,25})(?:[eE][-+]?\\d{1,2})?");
    private static final Map<String, Double> TIMES =
            Map.of("s", 1.0, "sec", 1.0, "seconds", 1.0, "ms", 1e-3, "us", 1e-6, "\u00b5s", 1e-6, "ns", 1e-9);
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("m/s2", "m/s2"),
            Map.entry("m/s^2", "m/s2"),
            Map.entry("m/s\u00b2", "m/s2"),
            // As its two bytes of UTF-8 read where a log is taken byte by byte.
            Map.entry("m/s\u00e2\u00b2", "m/s2"),
            Map.entry("g", "g"),
            Map.entry("mg", "mg"),
            Map.entry("lbf", "lbf"),
            Map.entry("lb", "lbf"),
            Map.entry("lbs", "lbf"),
            Map.entry("n", "N"),
            Map.entry("kn", "kN"));
    /** Above this many of the unknown unit between samples of a phone or a load cell it can't be the larger unit. */
    private static final double SECONDS_OF_A_PHONE = 0.5;

    private static final double SECONDS_OF_A_CELL = 5;
    private static final double THOUSAND = 1000;

    LogHeading {
        columns = List.copyOf(columns);
    }

    static LogHeading of(List<String> names, int values) {
        int[] columns = new int[values + 1];
        String[] due = values == 1 ? new String[] {"time", "force"} : new String[] {"time", "x", "y", "z"};
        for (int i = 0; i <= values; i++) {
            int found = find(names, due[i]);
            columns[i] = found < 0 ? i : found;
        }
        boolean clash = java.util.Arrays.stream(columns).distinct().count() < columns.length;
        if (clash) {
            java.util.Arrays.setAll(columns, i -> i);
        }
        String time = unitOf(names, columns[0]);
        String value = unitOf(names, columns[1]);
        return new LogHeading(
                java.util.Arrays.stream(columns).boxed().toList(),
                time == null ? null : TIMES.get(time),
                value == null ? null : UNITS.get(value));
    }

    private static int find(List<String> names, String due) {
        for (int i = 0; i < names.size(); i++) {
            String name = UNIT.matcher(names.get(i).strip().toLowerCase(Locale.ROOT))
                    .replaceFirst("")
                    .strip();
            boolean fits = switch (due) {
                case "time" -> name.equals("t") || name.contains("time") || name.startsWith("sec");
                case "force" -> name.contains("force") || name.contains("load") || name.contains("pull");
                default -> name.endsWith(due) && !name.contains("gyro") && !name.contains("mag");
            };
            if (fits) {
                return i;
            }
        }
        return -1;
    }

    private static @Nullable String unitOf(List<String> names, int column) {
        if (column >= names.size()) {
            return null;
        }
        Matcher m = UNIT.matcher(names.get(column).strip().toLowerCase(Locale.ROOT));
        return m.find() ? m.group(1).strip() : null;
    }

    /** The numbers of a line; null if they aren't all there. */
    double @Nullable [] numbers(List<String> cells, boolean commas) {
        double[] numbers = new double[columns.size()];
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i) >= cells.size()) {
                return null;
            }
            String cell = cells.get(columns.get(i)).strip();
            String plain = commas ? cell.replace(',', '.') : cell;
            if (!NUMBER.matcher(plain).matches()) {
                return null;
            }
            numbers[i] = Double.parseDouble(plain);
        }
        return numbers;
    }

    /** Seconds in one of the time's unit; guessed from the step between samples where the heading doesn't say. */
    double secondsOf(double step) {
        if (timeUnit != null) {
            return timeUnit;
        }
        double most = columns.size() == 2 ? SECONDS_OF_A_CELL : SECONDS_OF_A_PHONE;
        double factor = 1;
        for (int i = 0; i < 3 && step * factor > most; i++) {
            factor /= THOUSAND;
        }
        return factor;
    }

    /** What a log looks like, for advice. */
    String due() {
        return columns.size() == 2
                ? "a log has lines such as 0.10,412 under a heading such as time (s),force (lbf)"
                : "a log has lines such as 0.01,0.12,-0.30,9.81 under a heading such as time (s),x (m/s2),y,z";
    }
}
