package footing.core.records;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the rows of one machine tell of the time from a day on, by the hours it has run since.
 *
 * @param from that day, or the later one on which its recording began
 * @param to the day recording ended, or of the last row
 * @param hours run in between, over every new meter
 * @param runs the hours run by the days of its rows, in order
 * @param flats in order
 * @param fitted sets put on at drives and casters, in order
 * @param on the sets on it in the end, as far as the rows tell
 */
public record Happened(
        String machine,
        LocalDate from,
        LocalDate to,
        double hours,
        List<Run> runs,
        List<Flat> flats,
        List<Fitted> fitted,
        List<On> on) {
    public Happened {
        runs = List.copyOf(runs);
        flats = List.copyOf(flats);
        fitted = List.copyOf(fitted);
        on = List.copyOf(on);
    }

    /** Hours run by a day. */
    public record Run(LocalDate date, double hours) {}

    /** One row of flats: so many of them, until the machine cut again, and what was paid. */
    public record Flat(LocalDate date, double hours, double count, OptionalDouble minutes, OptionalDouble cost) {}

    /** A set that was put on. */
    public record Fitted(LocalDate date, double hours, Spot spot, String assembly) {}

    /** A set that is on, since when, and its hours; those are empty if the meter wasn't read by then. */
    public record On(Spot spot, String assembly, LocalDate fitted, OptionalDouble hours) {}

    /** What the log tells of a machine from a day on; empty if it has no row of that day or later. */
    public static Optional<Happened> since(Log log, String machine, LocalDate day) {
        List<Entry> rows = log.machines().getOrDefault(machine, List.of());
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        History history = new History(machine, rows);
        return history.end.isBefore(day) ? Optional.empty() : Optional.of(new Retelling(history, rows, day).happened());
    }

    /** The hours run by a day, spread evenly over the days between two rows. */
    public double hoursBy(LocalDate date) {
        Run before = new Run(from, 0);
        for (Run run : runs) {
            if (run.date.isAfter(date)) {
                double days = ChronoUnit.DAYS.between(before.date, run.date);
                double share = Math.max(ChronoUnit.DAYS.between(before.date, date), 0) / days;
                return before.hours + share * (run.hours - before.hours);
            }
            before = run;
        }
        return hours;
    }
}
