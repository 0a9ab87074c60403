package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.time.LocalDate;

/** The day on which a machine's hour meter is expected to show something, its hours spread as the simulation does. */
public final class MeterDate {
    private MeterDate() {}

    /**
     * The day of an hour.
     *
     * @param hours operating hours after the date of the case, from 0 to those left
     * @throws IllegalArgumentException for any other number
     */
    public static LocalDate of(ResolvedMachine m, double hours) {
        if (!(hours >= 0 && hours <= m.hoursLeft())) {
            throw new IllegalArgumentException(
                    m.id() + ": " + hours + " h is not within the " + m.hoursLeft() + " h left");
        }
        HourCalendar calendar = new HourCalendar(m.asOf(), m.season(), m.hoursPerYear(), m.hoursLeft());
        return calendar.date(calendar.day(hours));
    }
}
