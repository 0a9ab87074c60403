package footing.core.money;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The one equation behind PV, FV, PMT, NPER and RATE, solved for each of its terms.
 *
 * <p>PV (1 + r)^n + PMT (1 + r·type) ((1 + r)^n - 1)/r + FV = 0, where type is 0 for payments at the end of a period and
 * 1 at its beginning. The sign convention is that of spreadsheets: money received is positive and money paid is
 * negative, so a loan received (PV above 0) has a negative payment. At r = 0 the equation is PV + n PMT + FV = 0; near 0
 * the forms used here stay exact, where the textbook form cancels (OASIS issue OFFICE-2219).
 *
 * <p>Rates are shares per period above -1, periods at least 0, amounts finite; anything else throws
 * {@link IllegalArgumentException}. Source: OpenDocument OpenFormula 1.2.
 */
public final class Annuity {

    private Annuity() {}

    /**
     * Level payment (PMT).
     *
     * @param rate r per period, above -1
     * @param periods n, above 0
     * @param presentValue PV
     * @param futureValue FV left at the end, 0 for a loan paid off
     * @param time when payments fall
     * @return the payment of each period
     */
    public static double payment(
            double rate, double periods, double presentValue, double futureValue, PaymentTime time) {
        Inputs.positive("periods", periods);
        double today = presentValue + futureValue * DiscountFactor.single(rate, periods);
        return Inputs.finite("payment", -today / (DiscountFactor.uniform(rate, periods) * time.valueAtEnd(rate)));
    }

    /**
     * Value today (PV) of level payments and a final amount.
     *
     * @param rate r per period, above -1
     * @param periods n, at least 0
     * @param payment PMT
     * @param futureValue FV
     * @param time when payments fall
     * @return PV
     */
    public static double presentValue(
            double rate, double periods, double payment, double futureValue, PaymentTime time) {
        double payments = payment * DiscountFactor.uniform(rate, periods) * time.valueAtEnd(rate);
        return Inputs.finite("present value", -payments - futureValue * DiscountFactor.single(rate, periods));
    }

    /**
     * Value at the end (FV) of a first amount and level payments.
     *
     * @param rate r per period, above -1
     * @param periods n, at least 0
     * @param payment PMT
     * @param presentValue PV
     * @param time when payments fall
     * @return FV
     */
    public static double futureValue(
            double rate, double periods, double payment, double presentValue, PaymentTime time) {
        double growth = 1 / DiscountFactor.single(rate, periods);
        double payments = payment * DiscountFactor.uniform(rate, periods) * growth * time.valueAtEnd(rate);
        return Inputs.finite("future value", -payments - presentValue * growth);
    }

    /**
     * Number of periods (NPER): ln((PMT' - FV r)/(PMT' + PV r)) / ln(1 + r) with PMT' = PMT (1 + r·type). Equal signs of
     * PMT and PV give a negative number, as in spreadsheets.
     *
     * @param rate r per period, above -1
     * @param payment PMT
     * @param presentValue PV
     * @param futureValue FV
     * @param time when payments fall
     * @return the periods, or empty when no number of periods solves the equation (the payment never covers the
     *     interest)
     */
    public static OptionalDouble periods(
            double rate, double payment, double presentValue, double futureValue, PaymentTime time) {
        Inputs.finite("payment", payment);
        Inputs.finite("present value", presentValue);
        Inputs.finite("future value", futureValue);
        double paid = payment * time.valueAtEnd(Inputs.rate(rate));
        double perPeriod = paid + presentValue * rate;
        double periods = rate == 0
                ? -(presentValue + futureValue) / paid
                : Math.log1p(-rate * (presentValue + futureValue) / perPeriod) / Math.log1p(rate);
        return Double.isFinite(periods) ? OptionalDouble.of(periods) : OptionalDouble.empty();
    }

    /**
     * Rate per period (RATE): every root of the equation is found and the one nearest to 0 returned. There is one root
     * when PV differs in sign from payments and final amount; there may be two otherwise, or none.
     *
     * @param periods n, a whole number of at least 1
     * @param payment PMT
     * @param presentValue PV
     * @param futureValue FV
     * @param time when payments fall
     * @return r above -1, or empty when there is none
     */
    public static OptionalDouble rate(
            int periods, double payment, double presentValue, double futureValue, PaymentTime time) {
        Inputs.positive("periods", periods);
        double[] flows = new double[periods + 1];
        int first = time == PaymentTime.END ? 1 : 0;
        Arrays.fill(flows, first, first + periods, payment);
        flows[0] += presentValue;
        flows[periods] += futureValue;
        return RateOfReturn.internal(flows);
    }
}
