package footing.core.future;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/** The calendar months from that of asOf to that of the trade, and the operating hours within each. */
final class Months {
    private final YearMonth first;
    final int count;
    private final int[] monthOfDay;
    /** Operating hours run before each month; the last is all of them. */
    final double[] hours;
    /** The same as present value, ∫ v(t(x)) dx. */
    final double[] presentHours;

    Months(MachinePlan plan) {
        LocalDate asOf = plan.machine.asOf();
        HourCalendar calendar = plan.calendar;
        first = YearMonth.from(asOf);
        count = index(calendar.date(calendar.day(calendar.hoursLeft()))) + 1;
        monthOfDay = new int[calendar.days()];
        Arrays.setAll(monthOfDay, d -> Math.min(index(calendar.date(d)), count - 1));
        hours = new double[count + 1];
        presentHours = new double[count + 1];
        for (int m = 1; m <= count; m++) {
            double days = ChronoUnit.DAYS.between(asOf, start(m));
            hours[m] = m == count ? calendar.hoursLeft() : calendar.hourBy(days);
            presentHours[m] = plan.discounting.presentHours(calendar.place(hours[m]));
        }
    }

    private int index(LocalDate date) {
        return (int) first.until(YearMonth.from(date), ChronoUnit.MONTHS);
    }

    /** The first day of a month. */
    LocalDate start(int month) {
        return first.plusMonths(month).atDay(1);
    }

    /** The month of hour x at a place among the operating days; hour 0 is asOf itself. */
    int of(double x, double place) {
        return x > 0 ? monthOfDay[HourCalendar.dayOf(place)] : 0;
    }

    /** The month that contains hour x, x at most the hours left. */
    int ofHour(double x) {
        int m = 0;
        while (m < count - 1 && hours[m + 1] < x) {
            m++;
        }
        return m;
    }
}
