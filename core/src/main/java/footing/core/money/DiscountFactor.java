package footing.core.money;

/**
 * Factors that turn future money into money of today.
 *
 * <p>The rate d is per period, a share above -1 (negative rates are allowed); periods n are at least 0 and need not be
 * whole, so that the middle of a year is n - 0.5. All forms use {@code expm1} and {@code log1p}: they stay exact as
 * the rate approaches 0 and at 0 itself. A rate or a number of periods outside the range throws
 * {@link IllegalArgumentException}.
 *
 * <p>Source: 10 CFR 436.19 and NIST Handbook 135 (single, uniform and modified uniform present value); OMB Circular
 * A-94 (1992) for the mid-year form.
 */
public final class DiscountFactor {

    private DiscountFactor() {}

    /**
     * Value today of 1 paid once after n periods: SPV = (1 + d)^-n.
     *
     * @param rate discount rate d per period, above -1
     * @param periods n, at least 0; t - 0.5 for the middle of period t
     * @return the factor, 1 at n = 0
     */
    public static double single(double rate, double periods) {
        return Math.exp(-Inputs.periods(periods) * Math.log1p(Inputs.rate(rate)));
    }

    /**
     * Value today of 1 paid at the end of each of n periods: UPV = (1 - (1 + d)^-n) / d, and n at d = 0.
     *
     * @param rate discount rate d per period, above -1
     * @param periods n, at least 0
     * @return the factor
     */
    public static double uniform(double rate, double periods) {
        Inputs.periods(periods);
        if (Inputs.rate(rate) == 0) {
            return periods;
        }
        return -Math.expm1(-periods * Math.log1p(rate)) / rate;
    }

    /**
     * Value today of a yearly amount that grows at e: UPV* = (1 + e)/(d - e) · (1 - ((1 + e)/(1 + d))^n), and n when
     * d = e. The amount is stated at today's price, so the first payment is already 1 + e.
     *
     * @param escalation growth e per period, above -1
     * @param rate discount rate d per period, above -1
     * @param periods n, at least 0
     * @return the factor
     */
    public static double escalating(double escalation, double rate, double periods) {
        // ((1 + d)/(1 + e) - 1) is the rate at which the growing amount is worth a level one.
        return uniform((Inputs.rate(rate) - Inputs.rate(escalation)) / (1 + escalation), periods);
    }

    /**
     * Level payment at the end of each of n periods that is worth 1 today: CRF = d / (1 - (1 + d)^-n), 1/n at d = 0.
     *
     * @param rate discount rate d per period, above -1
     * @param periods n, above 0
     * @return the factor, the reciprocal of {@link #uniform}
     */
    public static double capitalRecovery(double rate, double periods) {
        return 1 / uniform(rate, Inputs.positive("periods", periods));
    }
}
