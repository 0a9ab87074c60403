package footing.core.fleet;

import java.util.List;
import java.util.Optional;

/**
 * What money costs.
 *
 * @param discountRate a year, effective, nominal
 * @param inflation a year, on every price
 * @param shopRate per hour in the shop
 * @param loan the case's loan, if it has one
 * @param loanApplies true if this machine's start cost is paid by it
 */
public record Terms(
        double discountRate,
        double inflation,
        double shopRate,
        Optional<Loan> loan,
        boolean loanApplies,
        Optional<Tax> tax) {
    /** Yearly rate compounded monthly, months, share paid at once. */
    public record Loan(double rate, int months, double down) {}

    /** The share of the start cost deducted in tax year k is {@code schedule.get(k − 1)}. */
    public record Tax(double rate, List<Double> schedule) {
        public Tax {
            schedule = List.copyOf(schedule);
        }
    }

    /** The tax rate, 0 where none is given. */
    public double taxRate() {
        return tax.map(Tax::rate).orElse(0.0);
    }
}
