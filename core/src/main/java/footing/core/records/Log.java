package footing.core.records;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rows of records looked at together: those that can be, by machine and in order of time, and those that can't
 * with the reason. Every row is in one of the two.
 */
public final class Log {
    private static final String BACKWARDS =
            "look at date and hours; for a new meter add a row with event fit at position meter";

    private final Map<String, List<Entry>> byMachine = new LinkedHashMap<>();
    private final List<Entry> purchases = new ArrayList<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private Log() {}

    public static Log of(List<Entry> rows) {
        Log log = new Log();
        Map<Entry, Integer> first = new HashMap<>();
        Map<String, List<Entry>> machines = new LinkedHashMap<>();
        for (Entry row : rows) {
            Integer twin = first.putIfAbsent(row.withoutLine(), row.line());
            if (twin != null) {
                log.trouble(row, "the same row stands in line " + twin, "delete one; for two flats give quantity 2");
            } else if (row.event() == Event.BOUGHT) {
                log.purchases.add(row);
            } else {
                machines.computeIfAbsent(row.machine(), m -> new ArrayList<>()).add(row);
            }
        }
        machines.forEach(log::machine);
        log.troubles.sort(Comparator.comparingInt(Trouble::line));
        return log;
    }

    public List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    /** Rows that can be. */
    public int rows() {
        return purchases.size()
                + byMachine.values().stream().mapToInt(List::size).sum();
    }

    public List<Entry> purchases() {
        return List.copyOf(purchases);
    }

    /** By machine, in the order of time. */
    public Map<String, List<Entry>> machines() {
        return byMachine;
    }

    private void trouble(Entry row, String reason, String mend) {
        troubles.add(new Trouble(row.line(), reason, mend));
    }

    private void machine(String id, List<Entry> rows) {
        boolean seen = rows.stream().anyMatch(r -> switch (r.event()) {
            case BEGIN, READING, FIT, END -> true;
            // Whoever remembers a season's flats means a machine; its hours may come from the calendar.
            case FLAT -> r.isRemembered();
            default -> false;
        });
        if (!seen) {
            rows.forEach(r -> trouble(
                    r, "machine '" + id + "' is seen nowhere else", "add a row with event begin and its hours"));
            return;
        }
        List<Entry> inOrder = new ArrayList<>(rows);
        inOrder.sort(Comparator.comparing(Entry::date)
                .thenComparing(r -> r.hours().orElse(-1) < 0 || r.replacesMeter() ? 1 : 0)
                .thenComparingInt(Entry::line));
        List<Entry> kept = new ArrayList<>(readable(sameDayByHours(inOrder)));
        byMachine.put(id, withinRecording(kept));
    }

    /** Rows of one day in the order of the meter, so that the order in the file doesn't matter. */
    private static List<Entry> sameDayByHours(List<Entry> rows) {
        List<Entry> sorted = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= rows.size(); i++) {
            if (i == rows.size() || !rows.get(i).date().equals(rows.get(from).date())) {
                List<Entry> day = new ArrayList<>(rows.subList(from, i));
                if (day.stream().noneMatch(Entry::replacesMeter)) {
                    day.sort(Comparator.comparingDouble(r -> r.hours().orElse(Double.POSITIVE_INFINITY)));
                }
                sorted.addAll(day);
                from = i;
            }
        }
        return sorted;
    }

    /** The rows whose hours can be, between one new meter and the next. */
    private List<Entry> readable(List<Entry> rows) {
        List<Entry> kept = new ArrayList<>();
        List<Entry> stretch = new ArrayList<>();
        for (Entry row : rows) {
            if (row.replacesMeter()) {
                kept.addAll(stretch(stretch));
                stretch.clear();
            }
            stretch.add(row);
        }
        kept.addAll(stretch(stretch));
        return kept;
    }

    private List<Entry> stretch(List<Entry> rows) {
        Set<Entry> rising = new HashSet<>(
                Rising.longest(rows.stream().filter(r -> r.hours().isPresent()).toList()));
        List<Entry> kept = new ArrayList<>();
        Entry before = null;
        for (Entry row : rows) {
            if (row.hours().isEmpty()) {
                kept.add(row);
            } else if (!rising.contains(row)) {
                trouble(row, "the hours run backwards: " + hours(row) + " h between its neighbors", BACKWARDS);
            } else if (before != null && tooFast(before, row)) {
                trouble(row, jump(before, row), BACKWARDS);
            } else {
                kept.add(row);
                before = row;
            }
        }
        return kept;
    }

    private static boolean tooFast(Entry before, Entry row) {
        long days = Math.max(ChronoUnit.DAYS.between(before.date(), row.date()), 1);
        return row.hours().getAsDouble() - before.hours().getAsDouble() > 24.0 * days;
    }

    private static String jump(Entry before, Entry row) {
        return hours(row.hours().getAsDouble() - before.hours().getAsDouble()) + " h in "
                + ChronoUnit.DAYS.between(before.date(), row.date()) + " days since line " + before.line();
    }

    private static String hours(Entry row) {
        return hours(row.hours().getAsDouble());
    }

    private static String hours(double hours) {
        String text = Double.toString(Math.rint(hours * 10) / 10);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** Without flats and the like from before recording began or after it ended; a set may have been fitted before. */
    private List<Entry> withinRecording(List<Entry> rows) {
        List<Entry> begins = rows.stream().filter(r -> r.event() == Event.BEGIN).toList();
        List<Entry> ends = rows.stream().filter(r -> r.event() == Event.END).toList();
        List<Entry> kept = new ArrayList<>();
        for (Entry row : rows) {
            boolean counts = (row.event() == Event.FLAT && !row.isRemembered()) || row.event() == Event.OFF;
            if (counts && !begins.isEmpty() && row.date().isBefore(begins.get(0).date())) {
                trouble(row, "before recording began on " + begins.get(0).date(), "move the begin or leave it out");
            } else if (counts
                    && !ends.isEmpty()
                    && row.date().isAfter(ends.get(ends.size() - 1).date())) {
                trouble(
                        row,
                        "after recording ended on " + ends.get(ends.size() - 1).date(),
                        "move the end");
            } else {
                kept.add(row);
            }
        }
        return kept;
    }
}
