package footing.core.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Goes through a machine's rows once more, for what happened from a day on. */
final class Retelling {
    private final History history;
    private final List<Entry> rows;
    private final Meter meter;
    private final LocalDate from;
    private final double start;
    private final List<Happened.Run> runs = new ArrayList<>();
    private final List<Happened.Flat> flats = new ArrayList<>();
    private final List<Happened.Fitted> fitted = new ArrayList<>();
    private final Map<Spot, Happened.On> on = new EnumMap<>(Spot.class);

    Retelling(History history, List<Entry> rows, LocalDate day) {
        this.history = history;
        this.rows = rows;
        meter = new Meter(rows);
        from = history.begin.isAfter(day) ? history.begin : day;
        start = meter.at(from).orElse(0);
    }

    Happened happened() {
        for (int i = 0; i < rows.size(); i++) {
            Entry row = rows.get(i);
            if (row.event() == Event.FIT && row.spot() != null && row.spot() != Spot.METER) {
                on.put(row.spot(), new Happened.On(row.spot(), row.assembly(), row.date(), age(i)));
            } else if (row.event() == Event.OFF && row.spot() != null) {
                on.remove(row.spot());
            }
            if (!row.date().isBefore(from) && !row.date().isAfter(history.end)) {
                tell(row, run(meter.at(i)));
            }
        }
        return new Happened(
                history.machine,
                from,
                history.end,
                run(history.endHours),
                runs,
                flats,
                fitted,
                List.copyOf(on.values()));
    }

    /** Hours since the start; none where no meter was ever read. */
    private double run(double hours) {
        return hours > start ? hours - start : 0;
    }

    private void tell(Entry row, double hours) {
        runs.add(new Happened.Run(row.date(), hours));
        Entry.Detail detail = row.detail();
        if (row.event() == Event.FLAT) {
            double count = detail.quantity().orElse(1);
            flats.add(new Happened.Flat(row.date(), hours, count, detail.minutes(), detail.cost()));
        } else if (row.event() == Event.FIT && row.spot() != null && row.spot() != Spot.METER) {
            fitted.add(new Happened.Fitted(row.date(), hours, row.spot(), row.assembly()));
        }
    }

    private OptionalDouble age(int row) {
        Entry entry = rows.get(row);
        boolean known = entry.hours().isPresent() || !entry.date().isBefore(history.begin);
        double age = history.endHours - meter.at(row);
        return known && age >= 0 ? OptionalDouble.of(age) : OptionalDouble.empty();
    }
}
