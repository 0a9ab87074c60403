package footing.core.money;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Money on a day.
 *
 * @param date the day
 * @param amount in currency units, finite; money in is positive, money out is negative
 */
public record DatedFlow(LocalDate date, double amount) {

    private static final double DAYS_PER_YEAR = 365;

    public DatedFlow {
        Inputs.finite("amount", amount);
    }

    /**
     * Years from an origin to the day, actual days over 365, leap years included.
     *
     * @param origin the day that is time 0
     * @return years, negative before the origin
     */
    public double yearsAfter(LocalDate origin) {
        return ChronoUnit.DAYS.between(origin, date) / DAYS_PER_YEAR;
    }
}
