package footing.core.future;

import footing.core.fleet.Terms;

/**
 * What a price of today counts for at an operating hour: as a present value, v = ((1+inflation)/(1+discountRate))^t,
 * and as the nominal sum then, (1+inflation)^t; and the integrals of both over the hours, ∫₀ˣ v(t(s)) ds.
 *
 * <p>Both grow exponentially within a day, so each is a table by operating day and a short series within it: with z the
 * log growth in a day times the share of it, exp z to z⁵ (relative error under 1e-15 for rates up to 100 % a year).
 */
final class Discounting {
    private static final double DAYS_PER_YEAR = 365;

    private final HourCalendar calendar;
    private final Growth present;
    private final Growth nominal;

    Discounting(HourCalendar calendar, Terms terms) {
        this.calendar = calendar;
        double inflation = Math.log1p(terms.inflation());
        present = new Growth(calendar, (inflation - Math.log1p(terms.discountRate())) / DAYS_PER_YEAR);
        nominal = new Growth(calendar, inflation / DAYS_PER_YEAR);
    }

    /** v at hour x of an operating day. */
    double present(double x, int day) {
        return present.at(x, day);
    }

    double nominal(double x, int day) {
        return nominal.at(x, day);
    }

    /** ∫₀ˣ v(t(s)) ds in hours. */
    double presentHours(double x, int day) {
        return present.hours(x, day);
    }

    double nominalHours(double x, int day) {
        return nominal.hours(x, day);
    }

    /** Nominal hours up to the start of an operating day. */
    double nominalHoursBefore(int day) {
        return nominal.hoursBefore[day];
    }

    /** Growth by a constant log rate a calendar day. */
    private final class Growth {
        private final double perDay;
        private final double[] factor;
        private final double[] hoursBefore;

        Growth(HourCalendar calendar, double perDay) {
            this.perDay = perDay;
            int n = calendar.days();
            factor = new double[n];
            hoursBefore = new double[n + 1];
            for (int day = 0; day < n; day++) {
                factor[day] = Math.exp(perDay * calendar.daysFromStart(day));
                hoursBefore[day + 1] = hoursBefore[day] + factor[day] * calendar.hoursOn(day) * mean(perDay);
            }
        }

        double at(double x, int day) {
            if (!(x > 0)) {
                return 1;
            }
            double z = perDay * calendar.share(x, day);
            return factor[day] * (1 + z * (1 + z / 2 * (1 + z / 3 * (1 + z / 4 * (1 + z / 5)))));
        }

        double hours(double x, int day) {
            double share = calendar.share(x, day);
            return hoursBefore[day] + factor[day] * calendar.hoursOn(day) * share * mean(perDay * share);
        }

        /** (exp z − 1)/z. */
        private static double mean(double z) {
            return 1 + z / 2 * (1 + z / 3 * (1 + z / 4 * (1 + z / 5 * (1 + z / 6))));
        }
    }
}
