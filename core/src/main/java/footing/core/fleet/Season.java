package footing.core.fleet;

import java.time.LocalDate;
import java.time.MonthDay;

/** The days of a year on which machines run, from start to end, both included; may run over New Year. */
public record Season(MonthDay start, MonthDay end) {
    public static final Season ALL_YEAR = new Season(MonthDay.of(1, 1), MonthDay.of(12, 31));

    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);

    public Season {
        if (start.equals(LEAP_DAY) || end.equals(LEAP_DAY)) {
            throw new IllegalArgumentException("a season can't start or end on 02-29");
        }
    }

    public boolean runsOverNewYear() {
        return end.isBefore(start);
    }

    /** First day of the season that starts in a year. */
    public LocalDate startIn(int year) {
        return start.atYear(year);
    }

    /** Last day of the season that starts in a year. */
    public LocalDate endOfSeasonFrom(int year) {
        return end.atYear(runsOverNewYear() ? year + 1 : year);
    }

    /** True on every day from start to end, of whatever year. */
    public boolean contains(LocalDate date) {
        MonthDay day = MonthDay.from(date);
        boolean fromStart = !day.isBefore(start);
        boolean untilEnd = !day.isAfter(end);
        return runsOverNewYear() ? fromStart || untilEnd : fromStart && untilEnd;
    }
}
