package footing.core.follow;

import footing.core.fleet.Position;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a set is into its warranty: hours and months run against its terms, whichever runs out first.
 *
 * <p>Pro rata, what is left is 1 − max(hours run / hours, months run / months) of the price. Whether a claim is paid so,
 * and whether cuts or worn tread are in it, the terms themselves say: common practice, no source.
 *
 * @param fitted the day it was put on; empty if nobody wrote it down
 * @param hours it has run; empty if nobody knows
 * @param terms as the case states them
 * @param on the day it is looked at
 * @param price of the set, today
 */
public record Warranty(
        String machine,
        Position position,
        String assembly,
        Optional<LocalDate> fitted,
        OptionalDouble hours,
        Terms terms,
        LocalDate on,
        double price) {
    /** What is given; one of the two may be left out. */
    public record Terms(OptionalDouble hours, OptionalDouble months) {
        public Terms {
            boolean some = hours.isPresent() || months.isPresent();
            if (!(some && hours.orElse(1) > 0 && months.orElse(1) > 0)) {
                throw new IllegalArgumentException("a warranty of " + hours + " hours and " + months + " months");
            }
        }
    }

    /** Months run, parts of a month by its days; empty if the day it was fitted isn't known. */
    public OptionalDouble months() {
        if (fitted.isEmpty() || fitted.get().isAfter(on)) {
            return OptionalDouble.empty();
        }
        long whole = ChronoUnit.MONTHS.between(fitted.get(), on);
        LocalDate since = fitted.get().plusMonths(whole);
        double rest = ChronoUnit.DAYS.between(since, on);
        return OptionalDouble.of(whole + rest / ChronoUnit.DAYS.between(since, since.plusMonths(1)));
    }

    public OptionalDouble hoursLeft() {
        return left(terms.hours, hours);
    }

    public OptionalDouble monthsLeft() {
        return left(terms.months, months());
    }

    private static OptionalDouble left(OptionalDouble given, OptionalDouble run) {
        return given.isPresent() && run.isPresent()
                ? OptionalDouble.of(Math.max(given.getAsDouble() - run.getAsDouble(), 0))
                : OptionalDouble.empty();
    }

    /** True if one of the terms is known to have run out. */
    public boolean over() {
        return hoursLeft().orElse(1) <= 0 || monthsLeft().orElse(1) <= 0;
    }

    /** The share not used up, by what is known of hours and months; empty if neither is. */
    public OptionalDouble unused() {
        double byHours = hoursLeft().isPresent() ? hoursLeft().getAsDouble() / terms.hours.getAsDouble() : 1;
        double byMonths = monthsLeft().isPresent() ? monthsLeft().getAsDouble() / terms.months.getAsDouble() : 1;
        return hoursLeft().isEmpty() && monthsLeft().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(byHours, byMonths));
    }

    /** True if a term is given that nobody knows how far it has run. */
    public boolean unsure() {
        boolean byHours = terms.hours.isPresent() && hours.isEmpty();
        return byHours || (terms.months.isPresent() && months().isEmpty());
    }
}
