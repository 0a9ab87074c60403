package footing.core.records;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One row of records, read but not yet believed.
 *
 * @param line where it stands in its file
 * @param machine empty for a purchase of which nobody wrote down the machine
 * @param hours what the hour meter showed; for a new meter what it starts at
 * @param assembly empty if nobody wrote it down
 */
public record Entry(
        int line,
        LocalDate date,
        String machine,
        Event event,
        OptionalDouble hours,
        @Nullable Spot spot,
        String assembly,
        Detail detail) {
    public Entry {
        if (hours.isPresent() && !(hours.getAsDouble() >= 0 && hours.getAsDouble() < 1e7)) {
            throw new IllegalArgumentException("a meter at " + hours.getAsDouble());
        }
    }

    /**
     * The rest of the row; texts are empty and numbers absent where nothing stands.
     *
     * @param minutes until the machine cut again
     * @param quantity flats counted together, or sets bought
     * @param about true if the quantity is from memory
     * @param depth in millimeters
     */
    public record Detail(
            String cause,
            String fix,
            String reason,
            String note,
            OptionalDouble minutes,
            OptionalDouble cost,
            OptionalDouble quantity,
            boolean about,
            OptionalDouble depth) {
        public static final Detail NONE = new Detail(
                "",
                "",
                "",
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                OptionalDouble.empty());
    }

    boolean replacesMeter() {
        return event == Event.FIT && spot == Spot.METER;
    }

    /** True for a count of flats from memory: those of the year up to its date. */
    boolean isRemembered() {
        return event == Event.FLAT && detail.about();
    }

    /** The row without its line, to find its twin by. */
    Entry withoutLine() {
        return new Entry(0, date, machine, event, hours, spot, assembly, detail);
    }
}
