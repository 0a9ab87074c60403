package footing.core.records;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * Flats from memory and the hours they came in: each count is of the year up to its day, or of the time since recording
 * began if that is shorter. Hours are the meter's where it was read and the calendar's on the days before and after.
 *
 * @param inside flats of a time in which others were written down
 * @param outside flats of the time that {@code hours} are counted over
 * @param guessed true if those hours come from the calendar for the greater part
 */
record Recalled(double inside, double outside, double hours, boolean guessed) {
    /** @param keepsLog true if flats were written down one by one as well */
    static Recalled of(History h, Background background, boolean keepsLog) {
        double inside = 0;
        double outside = 0;
        double metered = 0;
        double guessed = 0;
        LocalDate counted = LocalDate.MIN;
        for (History.Remembered r : h.remembered) {
            if (keepsLog && !r.to().isBefore(h.begin) && !r.to().isAfter(h.end)) {
                inside += r.flats();
                continue;
            }
            outside += r.flats();
            LocalDate from = from(h, r.to());
            from = from.isAfter(counted) ? from : counted.plusDays(1);
            metered += metered(h.meter, from, r.to());
            guessed += byCalendar(h, background, from, r.to());
            counted = r.to();
        }
        return new Recalled(inside, outside, metered + guessed, guessed > metered);
    }

    private static LocalDate from(History h, LocalDate to) {
        LocalDate year = to.minusYears(1).plusDays(1);
        boolean cut = h.hasBegin && !to.isBefore(h.begin) && year.isBefore(h.begin);
        return cut ? h.begin : year;
    }

    private static double metered(Meter meter, LocalDate from, LocalDate to) {
        OptionalDouble first = meter.at(from);
        OptionalDouble last = meter.at(to);
        return first.isPresent() && last.isPresent() ? Math.max(last.getAsDouble() - first.getAsDouble(), 0) : 0;
    }

    /** Hours of the days before the first reading and after the last. */
    private static double byCalendar(History h, Background background, LocalDate from, LocalDate to) {
        if (h.meter.first().isEmpty() || h.meter.last().isEmpty()) {
            return calendar(h, background, from, to);
        }
        LocalDate first = h.meter.first().get().minusDays(1);
        LocalDate last = h.meter.last().get().plusDays(1);
        return calendar(h, background, from, first.isBefore(to) ? first : to)
                + calendar(h, background, last.isAfter(from) ? last : from, to);
    }

    private static double calendar(History h, Background background, LocalDate from, LocalDate to) {
        return to.isBefore(from) ? 0 : background.hours(h.machine, from, to).orElse(0);
    }
}
