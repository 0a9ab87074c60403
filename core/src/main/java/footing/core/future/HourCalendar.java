package footing.core.future;

import footing.core.fleet.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/**
 * The operating hours still to come on the days of the calendar. Hours of a year are spread evenly over the days of its
 * season; the day of asOf counts, and what is left of a season on that day keeps its days and their hours.
 *
 * <p>Hour x lies at {@link #place} among the operating days; its instant is {@link #daysAt} days after asOf. Hour 0 is asOf itself. The hour that completes a season falls at the midnight after its last day and belongs to
 * that day.
 */
final class HourCalendar {
    /** Hours this close to the end of a season complete it. */
    static final double SAME_HOUR = 1e-9;

    private static final double DAYS_PER_YEAR = 365;
    private static final int CELLS = 256;

    private final double hoursLeft;
    private final LocalDate asOf;
    private final double[] seasonStart;
    /** The last hour of a season, and those so close that they complete it. */
    private final double[] seasonEnd;

    private final double[] daysPerHour;
    private final int[] firstDayOfSeason;
    /** The season before which no hour of a cell lies, the hours left cut into {@value #CELLS} cells. */
    private final int[] seasonOfCell = new int[CELLS + 1];

    private final double cellsPerHour;
    private int seasons;

    private int days;
    private int[] daysFromStart = new int[512];

    /**
     * @param hoursLeft X &gt; 0, the hours to the trade
     * @param hoursPerYear &gt; 0
     */
    HourCalendar(LocalDate asOf, Season season, double hoursPerYear, double hoursLeft) {
        int most = (int) Math.ceil(hoursLeft / hoursPerYear) + 3;
        this.asOf = asOf;
        this.hoursLeft = hoursLeft;
        seasonStart = new double[most];
        seasonEnd = new double[most];
        daysPerHour = new double[most];
        firstDayOfSeason = new int[most + 1];
        double hours = 0;
        for (int year = asOf.getYear() - 1; seasons == 0 || hours < hoursLeft - SAME_HOUR; year++) {
            hours = addSeason(season.startIn(year), season.endOfSeasonFrom(year), hours, hoursPerYear);
        }
        cellsPerHour = CELLS / hoursLeft;
        for (int cell = 1; cell <= CELLS; cell++) {
            // Half a cell early, whatever way the product that finds the cell is rounded.
            seasonOfCell[cell] = seasonOf((cell - 0.5) / cellsPerHour, 0);
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
        for (int i = 0; i < length; i++) {
            addDay(offset + i);
        }
        double end = first.isBefore(asOf) ? hoursBefore + length * perDay : hoursBefore + hoursPerYear;
        seasonStart[seasons] = hoursBefore;
        daysPerHour[seasons] = 1 / perDay;
        seasonEnd[seasons++] = end + SAME_HOUR;
        firstDayOfSeason[seasons] = days;
        return end;
    }

    private void addDay(int daysAfterStart) {
        if (days == daysFromStart.length) {
            daysFromStart = Arrays.copyOf(daysFromStart, 2 * days);
        }
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
        return 1 / daysPerHour[seasonOf(day)];
    }

    private int seasonOf(int day) {
        int s = 0;
        while (firstDayOfSeason[s + 1] <= day) {
            s++;
        }
        return s;
    }

    /** Days from asOf to the midnight an operating day starts with. */
    int daysFromStart(int day) {
        return daysFromStart[day];
    }

    LocalDate date(int day) {
        return asOf.plusDays(daysFromStart[day]);
    }

    /**
     * Where hour x lies, 0 &lt; x ≤ X, in operating days: day d and a share of it are d + share, the share above 0 and
     * at most 1. Hour 0 is 0.
     */
    double place(double x) {
        int s = seasonOf(x, seasonOfCell[(int) (x * cellsPerHour)]);
        double place = firstDayOfSeason[s] + (x - seasonStart[s]) * daysPerHour[s];
        return Math.min(place, firstDayOfSeason[s + 1]);
    }

    private int seasonOf(double x, int from) {
        int s = from;
        while (x > seasonEnd[s]) {
            s++;
        }
        return s;
    }

    /** The operating day of a place. */
    static int dayOf(double place) {
        int whole = (int) place;
        return whole == place && whole > 0 ? whole - 1 : whole;
    }

    /** The operating day of hour x; the first for 0. */
    int day(double x) {
        return dayOf(place(x));
    }

    /** Days from asOf to the instant of hour x. */
    double daysAt(double x) {
        if (!(x > 0)) {
            return 0;
        }
        double place = place(x);
        int day = dayOf(place);
        return daysFromStart[day] + place - day;
    }

    /** t(x): years of 365 days from asOf to the instant of hour x. */
    double yearsAt(double x) {
        return daysAt(x) / DAYS_PER_YEAR;
    }

    /** The last hour completed by the end of a number of days from asOf; at most X. */
    double hourBy(double daysAfterStart) {
        double hour = 0;
        for (int s = 0; s < seasons; s++) {
            double offset = daysFromStart[firstDayOfSeason[s]];
            double length = firstDayOfSeason[s + 1] - firstDayOfSeason[s];
            double run = Math.min(Math.max(daysAfterStart - offset, 0), length);
            hour = run > 0 ? seasonStart[s] + run / daysPerHour[s] : hour;
        }
        return Math.min(hour, hoursLeft);
    }
}
