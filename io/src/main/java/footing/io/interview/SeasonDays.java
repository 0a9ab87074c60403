package footing.io.interview;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** The days of the season, in a year that is no leap year; it may run over New Year. */
final class SeasonDays {
    private static final String NO_LEAP_YEAR = "2001-";
    private static final int YEAR = 365;

    private SeasonDays() {}

    static long count(Given given) {
        long days = ChronoUnit.DAYS.between(day(given, "firstCut"), day(given, "lastCut"));
        return (days < 0 ? days + YEAR : days) + 1;
    }

    /** The last of some weeks that begin with the first cut, but no later than the last cut. */
    static String endOfWeeks(Given given, int weeks) {
        long days = Math.min(7L * weeks, count(given));
        return day(given, "firstCut").plusDays(days - 1).toString().substring(NO_LEAP_YEAR.length());
    }

    private static LocalDate day(Given given, String field) {
        return LocalDate.parse(NO_LEAP_YEAR + given.text(field));
    }
}
