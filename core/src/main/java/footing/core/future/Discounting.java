package footing.core.future;

import footing.core.fleet.Terms;

/**
 * What a price of today counts for at an operating hour: as a present value, v = ((1+inflation)/(1+discountRate))^t,
 * and as the nominal sum then, (1+inflation)^t; and the integrals of both over the hours, ∫₀ˣ v(t(s)) ds.
 *
 * <p>Both grow exponentially within a day, so each is a table by operating day and a short series within it: with z the
 * log growth in a day times the share of it, exp z to z³ (relative error under 1e-12 for rates up to 100 % a year).
 */
final class Discounting {
    private static final double DAYS_PER_YEAR = 365;

    private final Growth present;
    private final Growth nominal;

    Discounting(HourCalendar calendar, Terms terms) {
        double inflation = Math.log1p(terms.inflation());
        present = new Growth(calendar, (inflation - Math.log1p(terms.discountRate())) / DAYS_PER_YEAR);
        nominal = new Growth(calendar, inflation / DAYS_PER_YEAR);
    }

    /** v at a place among the operating days. */
    double present(double place) {
        return present.at(place);
    }

    double nominal(double place) {
        return nominal.at(place);
    }

    /** v a share into an operating day. */
    double present(int day, double share) {
        return present.at(day, share);
    }

    double nominal(int day, double share) {
        return nominal.at(day, share);
    }

    /** ∫ v(t) over the hours up to a place, in hours. */
    double presentHours(double place) {
        return present.hours(place);
    }

    double nominalHours(double place) {
        return nominal.hours(place);
    }

    /** Nominal hours up to the start of an operating day. */
    double nominalHoursBefore(int day) {
        return nominal.hoursBefore[day];
    }

    /** Growth by a constant log rate a calendar day. */
    private static final class Growth {
        private final double perDay;
        private final double[] factor;
        /** The hours of an operating day at what they count for as it begins, and of all days before it. */
        private final double[] hoursOn;

        private final double[] hoursBefore;

        Growth(HourCalendar calendar, double perDay) {
            this.perDay = perDay;
            int n = calendar.days();
            factor = new double[n];
            hoursOn = new double[n];
            hoursBefore = new double[n + 1];
            for (int day = 0; day < n; day++) {
                factor[day] = Math.exp(perDay * calendar.daysFromStart(day));
                hoursOn[day] = factor[day] * calendar.hoursOn(day);
                hoursBefore[day + 1] = hoursBefore[day] + hoursOn[day] * mean(perDay);
            }
        }

        double at(double place) {
            if (!(place > 0)) {
                return 1;
            }
            int day = HourCalendar.dayOf(place);
            return at(day, place - day);
        }

        double at(int day, double share) {
            double z = perDay * share;
            return factor[day] * (1 + z * (1 + z * (1 / 2.0 + z * (1 / 6.0))));
        }

        double hours(double place) {
            int day = HourCalendar.dayOf(place);
            double share = place - day;
            return hoursBefore[day] + hoursOn[day] * share * mean(perDay * share);
        }

        /** (exp z − 1)/z. */
        private static double mean(double z) {
            return 1 + z * (1 / 2.0 + z * (1 / 6.0 + z * (1 / 24.0 + z * (1 / 120.0 + z / 720.0))));
        }
    }
}
