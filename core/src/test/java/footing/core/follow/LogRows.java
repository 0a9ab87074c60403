package footing.core.follow;

import footing.core.records.Entry;
import footing.core.records.Event;
import footing.core.records.Log;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A log written row by row. */
final class LogRows {
    private final List<Entry> rows = new ArrayList<>();

    LogRows reading(String date, String machine, double hours) {
        return add(date, machine, Event.READING, hours, null, "", Entry.Detail.NONE);
    }

    LogRows begin(String date, String machine, double hours) {
        return add(date, machine, Event.BEGIN, hours, null, "", Entry.Detail.NONE);
    }

    LogRows fit(String date, String machine, double hours, Spot spot, String assembly) {
        return add(date, machine, Event.FIT, hours, spot, assembly, Entry.Detail.NONE);
    }

    /** @param minutes and cost not written down if negative */
    LogRows flat(String date, String machine, double hours, double minutes, double cost) {
        Entry.Detail none = Entry.Detail.NONE;
        Entry.Detail detail = new Entry.Detail(
                "", "", "", "", known(minutes), known(cost), OptionalDouble.empty(), false, none.depth());
        return add(date, machine, Event.FLAT, hours, Spot.DRIVE, "", detail);
    }

    private static OptionalDouble known(double x) {
        return x < 0 ? OptionalDouble.empty() : OptionalDouble.of(x);
    }

    private LogRows add(
            String date,
            String machine,
            Event event,
            double hours,
            @org.jspecify.annotations.Nullable Spot spot,
            String assembly,
            Entry.Detail detail) {
        rows.add(new Entry(
                rows.size() + 2,
                LocalDate.parse(date),
                machine,
                event,
                hours < 0 ? OptionalDouble.empty() : OptionalDouble.of(hours),
                spot,
                assembly,
                detail));
        return this;
    }

    Log log() {
        Log log = Log.of(rows);
        if (!log.troubles().isEmpty()) {
            throw new AssertionError(log.troubles().toString());
        }
        return log;
    }
}
