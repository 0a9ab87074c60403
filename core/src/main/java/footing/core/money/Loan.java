package footing.core.money;

import java.time.LocalDate;

/**
 * A dealer's or bank's loan on a purchase: some of the cost paid at once, the rest in level monthly payments.
 *
 * <p>Monthly rate i = annualRate/12, as loans are quoted. With B the borrowed part, payment = B · i/(1 - (1 + i)^-n),
 * balance after k payments = B · a(n - k)/a(n) where a is {@link DiscountFactor#uniform}, interest of payment k =
 * i · balance after k - 1. At i = 0 these are B/n, B (n - k)/n and 0. Everything is proportional to the cost, which may
 * have either sign; amounts are positive for a positive cost. Not rounded to cents. Source: OpenDocument OpenFormula
 * 1.2, PMT and IPMT.
 *
 * @param annualRate quoted rate a year, at least 0
 * @param months n, number of payments, at least 1
 * @param downShare share of the cost that is paid at once, 0 to 1
 */
public record Loan(double annualRate, int months, double downShare) {

    private static final int MONTHS_PER_YEAR = 12;

    public Loan {
        Inputs.notNegative("annualRate", annualRate);
        Inputs.positive("months", months);
        Inputs.share("downShare", downShare);
    }

    /**
     * A loan of the whole cost whose payments, discounted at an effective yearly rate, are worth the cost: monthly rate
     * (1 + e)^(1/12) - 1.
     *
     * @param effectiveRate e a year, at least 0
     * @param months number of payments, at least 1
     * @return the loan
     */
    public static Loan atEffectiveRate(double effectiveRate, int months) {
        return new Loan(InterestRate.nominal(effectiveRate, MONTHS_PER_YEAR), months, 0);
    }

    /**
     * The monthly rate.
     *
     * @return annualRate/12
     */
    public double monthlyRate() {
        return annualRate / MONTHS_PER_YEAR;
    }

    /**
     * What is paid at once.
     *
     * @param cost of the whole purchase
     * @return downShare · cost
     */
    public double downPayment(double cost) {
        return downShare * Inputs.finite("cost", cost);
    }

    /**
     * What is borrowed.
     *
     * @param cost of the whole purchase
     * @return cost less the down payment
     */
    public double borrowed(double cost) {
        return cost - downPayment(cost);
    }

    /**
     * The level monthly payment.
     *
     * @param cost of the whole purchase, down payment included
     * @return payment a month
     */
    public double payment(double cost) {
        return borrowed(cost) * DiscountFactor.capitalRecovery(monthlyRate(), months);
    }

    /**
     * Interest in payment k.
     *
     * @param cost of the whole purchase, down payment included
     * @param k 1 to months
     * @return interest, the largest in the first payment
     */
    public double interest(double cost, int k) {
        return monthlyRate() * balance(cost, Inputs.between("payment number", k, 1, months) - 1);
    }

    /**
     * Principal in payment k.
     *
     * @param cost of the whole purchase, down payment included
     * @param k 1 to months
     * @return payment less interest
     */
    public double principal(double cost, int k) {
        return payment(cost) - interest(cost, k);
    }

    /**
     * What is owed after k payments.
     *
     * @param cost of the whole purchase, down payment included
     * @param k 0 to months
     * @return the borrowed part at 0, and 0 after the last payment
     */
    public double balance(double cost, int k) {
        Inputs.between("payments made", k, 0, months);
        return payment(cost) * DiscountFactor.uniform(monthlyRate(), months - k);
    }

    /**
     * The day of payment k: k calendar months after the start, on the start's day of the month or, in a shorter month,
     * its last day. A loan of January 31 is paid on February 28 or 29 and on March 31.
     *
     * @param start the day of the purchase
     * @param k 0 to months
     * @return the day
     */
    public LocalDate paymentDate(LocalDate start, int k) {
        return start.plusMonths(Inputs.between("payment number", k, 0, months));
    }
}
