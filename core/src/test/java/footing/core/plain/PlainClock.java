package footing.core.plain;

import static java.time.temporal.ChronoUnit.DAYS;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** When an operating hour falls: a year's hours lie evenly on the days of its season. Walks the seasons each time. */
public final class PlainClock {
    private static final double SAME_HOUR = 1e-9;

    private final LocalDate asOf;
    private final Season season;
    private final double hoursPerYear;

    public PlainClock(LocalDate asOf, Season season, double hoursPerYear) {
        this.asOf = asOf;
        this.season = season;
        this.hoursPerYear = hoursPerYear;
    }

    public static PlainClock of(ResolvedMachine m) {
        return new PlainClock(m.asOf(), m.season(), m.hoursPerYear());
    }

    /** An instant: days from asOf, and the date it belongs to. */
    public record Moment(double days, LocalDate date) {}

    /** What is left of one season: hours before it, its own hours, first day and the midnight that ends it. */
    private record Rest(double before, double hours, double firstDay, double endDay) {
        double after() {
            return before + hours;
        }

        double day(double hour) {
            return Math.min(firstDay + (hour - before) / hours * (endDay - firstDay), endDay);
        }
    }

    /** Hours that follow each other day by day within one year. */
    public record Stretch(double hours, double firstDay, double lastDay, int year) {
        /** ∫ base^(days/365) over the hours up to a day: with z the growth of the exponent, hours·(e^z − 1)/z. */
        public double integral(double base, double untilDay) {
            double last = Math.min(lastDay, untilDay);
            if (!(last > firstDay)) {
                return 0;
            }
            double counted = hours * (last - firstDay) / (lastDay - firstDay);
            double z = Math.log(base) * (last - firstDay) / 365;
            return counted * Math.pow(base, firstDay / 365) * (z == 0 ? 1 : Math.expm1(z) / z);
        }
    }

    public Moment at(double hour) {
        if (hour == 0) {
            return new Moment(0, asOf);
        }
        for (Rest rest : seasons(hour)) {
            if (Math.abs(hour - rest.after()) <= SAME_HOUR) {
                return new Moment(rest.endDay, asOf.plusDays((long) rest.endDay - 1));
            }
            if (hour < rest.after()) {
                double days = rest.day(hour);
                return new Moment(days, asOf.plusDays((long) Math.floor(days)));
            }
        }
        throw new IllegalStateException("no season holds hour " + hour);
    }

    public double days(double hour) {
        return at(hour).days();
    }

    /** The hours between two, cut where a season or a year ends. */
    public List<Stretch> stretches(double from, double to) {
        List<Stretch> all = new ArrayList<>();
        for (Rest rest : seasons(to)) {
            double first = Math.max(from, rest.before);
            double last = Math.min(to, rest.after());
            if (last - first > SAME_HOUR) {
                cutAtNewYear(all, last - first, rest.day(first), rest.day(last));
            }
        }
        return all;
    }

    private void cutAtNewYear(List<Stretch> all, double hours, double firstDay, double lastDay) {
        int year = asOf.plusDays((long) Math.floor(firstDay + SAME_HOUR)).getYear();
        double newYear = DAYS.between(asOf, LocalDate.of(year + 1, 1, 1));
        if (lastDay - newYear > SAME_HOUR) {
            double before = hours * (newYear - firstDay) / (lastDay - firstDay);
            all.add(new Stretch(before, firstDay, newYear, year));
            all.add(new Stretch(hours - before, newYear, lastDay, year + 1));
        } else {
            all.add(new Stretch(hours, firstDay, lastDay, year));
        }
    }

    /** The seasons from asOf on, as many as it takes to reach an hour. */
    private List<Rest> seasons(double hour) {
        List<Rest> all = new ArrayList<>();
        double before = 0;
        for (int year = asOf.getYear() - 1; all.isEmpty() || before + SAME_HOUR < hour; year++) {
            LocalDate start = season.startIn(year);
            LocalDate last = season.endOfSeasonFrom(year);
            if (!last.isBefore(asOf)) {
                LocalDate first = start.isBefore(asOf) ? asOf : start;
                double days = DAYS.between(first, last) + 1;
                double hours = hoursPerYear * days / (DAYS.between(start, last) + 1);
                double firstDay = DAYS.between(asOf, first);
                all.add(new Rest(before, hours, firstDay, firstDay + days));
                before += hours;
            }
        }
        return all;
    }
}
