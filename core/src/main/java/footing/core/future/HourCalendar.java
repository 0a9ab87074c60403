package footing.core.future;

import footing.core.fleet.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The operating hours still to come on the days of the calendar. Hours of a year are spread evenly over the days of its
 * season; the day of asOf counts, and what is left of a season on that day keeps its days and their hours.
 *
 * <p>Hour x lies on operating day {@link #day}, a share {@link #share} into it; its instant is that many days after
 * asOf. Hour 0 is asOf itself. The hour that completes a season falls at the midnight after its last day and belongs to
 * that day. All arrays are by operating day.
 */
final class HourCalendar {
    /** Hours this close to the end of a season complete it. */
    static final double SAME_HOUR = 1e-9;

    private static final double DAYS_PER_YEAR = 365;

    private final double hoursLeft;
    private final double[] seasonEnd;
    private final int[] firstDayOfSeason;
    private final LocalDate asOf;
    private int seasons;

    private int days;
    private double[] hourAtStart = new double[512];
    private double[] perHour = new double[512];
    private int[] daysFromStart = new int[512];

    /**
     * @param hoursLeft X &gt; 0, the hours to the trade
     * @param hoursPerYear &gt; 0
     */
    HourCalendar(LocalDate asOf, Season season, double hoursPerYear, double hoursLeft) {
        int most = (int) Math.ceil(hoursLeft / hoursPerYear) + 3;
        this.asOf = asOf;
        this.hoursLeft = hoursLeft;
        seasonEnd = new double[most];
        firstDayOfSeason = new int[most + 1];
        double hours = 0;
        for (int year = asOf.getYear() - 1; hours < hoursLeft - SAME_HOUR; year++) {
            hours = addSeason(season.startIn(year), season.endOfSeasonFrom(year), hours, hoursPerYear);
        }
    }

    private double addSeason(LocalDate first, LocalDate last, double hoursBefore, double hoursPerYear) {
        if (last.isBefore(asOf)) {
            return hoursBefore;
        }
        double perDay = hoursPerYear / (ChronoUnit.DAYS.between(first, last) + 1);
        LocalDate from = first.isBefore(asOf) ? asOf : first;
        int offset = (int) ChronoUnit.DAYS.between(asOf, from);
        int length = (int) ChronoUnit.DAYS.between(from, last) + 1;
        firstDayOfSeason[seasons] = days;
        for (int i = 0; i < length; i++) {
            addDay(hoursBefore + i * perDay, perDay, offset + i);
        }
        double end = first.isBefore(asOf) ? hoursBefore + length * perDay : hoursBefore + hoursPerYear;
        seasonEnd[seasons++] = end;
        firstDayOfSeason[seasons] = days;
        return end;
    }

    private void addDay(double hour, double perDay, int daysAfterStart) {
        if (days == hourAtStart.length) {
            hourAtStart = java.util.Arrays.copyOf(hourAtStart, 2 * days);
            perHour = java.util.Arrays.copyOf(perHour, 2 * days);
            daysFromStart = java.util.Arrays.copyOf(daysFromStart, 2 * days);
        }
        hourAtStart[days] = hour;
        perHour[days] = 1 / perDay;
        daysFromStart[days++] = daysAfterStart;
    }

    double hoursLeft() {
        return hoursLeft;
    }

    /** Operating days listed, at least to the last one needed. */
    int days() {
        return days;
    }

    /** Hours on an operating day. */
    double hoursOn(int day) {
        return 1 / perHour[day];
    }

    /** Days from asOf to the midnight an operating day starts with. */
    int daysFromStart(int day) {
        return daysFromStart[day];
    }

    LocalDate date(int day) {
        return asOf.plusDays(daysFromStart[day]);
    }

    /** The operating day of hour x, 0 &lt; x ≤ X; for 0 the first. */
    int day(double x) {
        int s = 0;
        while (x > seasonEnd[s] + SAME_HOUR) {
            s++;
        }
        int first = firstDayOfSeason[s];
        int last = firstDayOfSeason[s + 1] - 1;
        int day = first + (int) Math.ceil((x - hourAtStart[first]) * perHour[first]) - 1;
        return Math.min(Math.max(day, first), last);
    }

    /** How far into its operating day hour x lies, 0 to 1. */
    double share(double x, int day) {
        double share = (x - hourAtStart[day]) * perHour[day];
        return Math.min(Math.max(share, 0), 1);
    }

    /** Days from asOf to the instant of hour x. */
    double daysAt(double x) {
        if (!(x > 0)) {
            return 0;
        }
        int day = day(x);
        return daysFromStart[day] + share(x, day);
    }

    /** t(x): years of 365 days from asOf to the instant of hour x. */
    double yearsAt(double x) {
        return daysAt(x) / DAYS_PER_YEAR;
    }

    /** The last hour completed by the end of a number of days from asOf; at most X. */
    double hourBy(double daysAfterStart) {
        double hour = 0;
        for (int day = 0; day < days && daysFromStart[day] < daysAfterStart; day++) {
            double part = Math.min(daysAfterStart - daysFromStart[day], 1);
            hour = hourAtStart[day] + part * hoursOn(day);
        }
        return Math.min(hour, hoursLeft);
    }
}
