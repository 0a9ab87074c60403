package footing.core.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the rows of one machine amount to: hours watched, flats, sets, depths. */
final class History {
    final String machine;
    final LocalDate begin;
    final LocalDate end;
    final double beginHours;
    final double endHours;
    final List<SetSpan> sets = new ArrayList<>();
    final Map<String, TreadWear.Readings> depths = new LinkedHashMap<>();
    /** True if a row says when recording began, so that nothing was watched before. */
    final boolean hasBegin;

    /** Flats written down one by one. */
    double counted;

    final List<Remembered> remembered = new ArrayList<>();

    private final List<Entry> rows;
    private final List<Double> flatsAt = new ArrayList<>();
    /** True if a row counts so many flats that they were not written down as they came. */
    private boolean lumped;

    final Meter meter;

    /** More flats in one row have no hour of their own; common practice, no source. */
    private static final double MOST_AT_ONCE = 10;

    /** What a meter resolves; a flat at no age at all would have no likelihood. */
    private static final double FIRST_HOUR = 1;

    /** Flats from memory, of the year up to a day. */
    record Remembered(LocalDate to, double flats) {}

    private static final class Open {
        final String assembly;
        final double fitted;
        final double from;
        final List<Double> flats = new ArrayList<>();
        final List<Double> hours = new ArrayList<>();
        final List<Double> depths = new ArrayList<>();

        Open(String assembly, double fitted, double from) {
            this.assembly = assembly;
            this.fitted = fitted;
            this.from = from;
        }
    }

    /** @param rows of one machine, in the order of time, at least one */
    History(String machine, List<Entry> rows) {
        this.machine = machine;
        this.rows = List.copyOf(rows);
        meter = new Meter(rows);
        int first = index(Event.BEGIN, true, firstWatched());
        int last = index(Event.END, false, lastWatched());
        hasBegin = rows.get(first).event() == Event.BEGIN;
        begin = rows.get(first).date();
        end = rows.get(last).date();
        beginHours = meter.at(first);
        endHours = meter.at(last);
        walk();
    }

    double hours() {
        double hours = endHours - beginHours;
        return hours > 0 ? hours : 0;
    }

    /** A count from memory is no sign that anybody was watching then. */
    private int firstWatched() {
        int i = 0;
        while (i < rows.size() - 1 && rows.get(i).isRemembered()) {
            i++;
        }
        return i;
    }

    private int lastWatched() {
        int i = rows.size() - 1;
        while (i > 0 && rows.get(i).isRemembered()) {
            i--;
        }
        return i;
    }

    private int index(Event event, boolean earliest, int otherwise) {
        int found = otherwise;
        boolean any = false;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).event() == event && !(any && earliest)) {
                found = i;
                any = true;
            }
        }
        return found;
    }

    private void walk() {
        Map<Spot, Open> on = new EnumMap<>(Spot.class);
        for (int i = 0; i < rows.size(); i++) {
            Entry row = rows.get(i);
            double x = meter.at(i);
            switch (row.event()) {
                case FIT -> fit(on, row, x);
                case OFF -> off(on, row, x);
                case FLAT -> flat(on, row, x);
                case TREAD -> tread(on, row, x);
                case BEGIN, READING, BOUGHT, END -> {}
            }
        }
        on.forEach((spot, open) -> close(spot, open, endHours, SetSpan.End.RUNNING));
    }

    private void fit(Map<Spot, Open> on, Entry row, double x) {
        Spot spot = row.spot();
        if (spot == null || spot == Spot.METER) {
            return;
        }
        Open old = on.get(spot);
        if (old != null) {
            close(spot, old, x, SetSpan.End.UNSAID);
        }
        // Before the first reading the meter stands still, so a set fitted then has no known age.
        boolean known = row.hours().isPresent() || !row.date().isBefore(begin);
        on.put(spot, new Open(row.assembly(), known ? x : Double.NaN, Math.max(x, beginHours)));
    }

    private void off(Map<Spot, Open> on, Entry row, double x) {
        Spot spot = row.spot();
        Open old = spot == null ? null : on.remove(spot);
        if (spot != null && old != null) {
            close(spot, old, x, row.detail().reason().equals("worn") ? SetSpan.End.WORN : SetSpan.End.OTHER);
        }
    }

    private void flat(Map<Spot, Open> on, Entry row, double x) {
        double flats = row.detail().quantity().orElse(1);
        if (row.isRemembered()) {
            remembered.add(new Remembered(row.date(), flats));
            return;
        }
        counted += flats;
        if (flats > MOST_AT_ONCE) {
            lumped = true;
            return;
        }
        for (int i = 0; i < flats && !Double.isNaN(x); i++) {
            flatsAt.add(x);
        }
        Open set = row.spot() == null ? null : on.get(row.spot());
        if (set != null) {
            for (int i = 0; i < flats; i++) {
                set.flats.add(x);
            }
        }
    }

    /** Of the flats written down one by one; empty if too few have a place in the hours. */
    Optional<FlatsTrend> trend() {
        double watched = hours();
        return watched > 0 && !lumped
                ? FlatsTrend.of(
                        flatsAt.stream()
                                .map(x -> Math.min(Math.max(x - beginHours, FIRST_HOUR), watched))
                                .sorted()
                                .toList(),
                        watched)
                : Optional.empty();
    }

    private void tread(Map<Spot, Open> on, Entry row, double x) {
        Spot spot = row.spot();
        if (spot == null || row.detail().depth().isEmpty() || Double.isNaN(x)) {
            return;
        }
        Open set = on.computeIfAbsent(spot, s -> new Open(row.assembly(), Double.NaN, beginHours));
        set.hours.add(x);
        set.depths.add(row.detail().depth().getAsDouble());
    }

    private void close(Spot spot, Open open, double x, SetSpan.End how) {
        if (x > open.from) {
            sets.add(new SetSpan(machine, spot, open.assembly, open.fitted, open.from, x, how, open.flats));
        }
        if (!open.hours.isEmpty()) {
            boolean running = how == SetSpan.End.RUNNING;
            String name = machine + " " + spot.name().toLowerCase(Locale.ROOT)
                    + (running ? "" : ", until " + Math.round(x) + " h");
            depths.put(name, new TreadWear.Readings(name, open.hours, open.depths));
        }
    }

    /** Hours the position ran with sets that are known, by assembly. */
    Map<String, Double> hoursBy(Spot spot) {
        Map<String, Double> by = new LinkedHashMap<>();
        for (SetSpan set : sets) {
            if (set.spot() == spot) {
                by.merge(set.assembly(), set.to() - set.from(), Double::sum);
            }
        }
        return by;
    }
}
