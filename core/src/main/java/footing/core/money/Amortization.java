package footing.core.money;

/**
 * How level payments split into interest and principal (IPMT, PPMT, CUMIPMT, CUMPRINC), with a final amount and payments
 * at either end of the period.
 *
 * <p>Interest of payment k is the rate times what is owed before it; payments at the beginning bear none in the first
 * period, and later that of the period before. Principal is the rest. Signs as in {@link Annuity}: for a loan received
 * payment, interest and principal are negative. Source: OpenDocument OpenFormula 1.2 with the correction of OASIS issue
 * OFFICE-1049 (annuity due).
 *
 * @param rate r per period, above -1
 * @param periods n, at least 1
 * @param presentValue PV, finite
 * @param futureValue FV, finite, 0 for a loan paid off
 * @param time when payments fall
 */
public record Amortization(double rate, int periods, double presentValue, double futureValue, PaymentTime time) {

    public Amortization {
        Inputs.rate(rate);
        Inputs.positive("periods", periods);
        Inputs.finite("present value", presentValue);
        Inputs.finite("future value", futureValue);
    }

    /**
     * The level payment.
     *
     * @return PMT
     */
    public double payment() {
        return Annuity.payment(rate, periods, presentValue, futureValue, time);
    }

    /**
     * Interest part of a payment (IPMT).
     *
     * @param k number of the payment, 1 to n
     * @return interest in payment k
     */
    public double interest(int k) {
        Inputs.between("payment number", k, 1, periods);
        if (time == PaymentTime.BEGINNING && k == 1) {
            return 0;
        }
        return -balance(k - 1) * rate / time.valueAtEnd(rate);
    }

    /**
     * Principal part of a payment (PPMT).
     *
     * @param k number of the payment, 1 to n
     * @return payment less its interest
     */
    public double principal(int k) {
        return payment() - interest(k);
    }

    /**
     * Interest in payments from one to another (CUMIPMT).
     *
     * @param first first payment counted, from 1
     * @param last last payment counted, at most n
     * @return sum of the interest parts
     */
    public double cumulativeInterest(int first, int last) {
        Inputs.between("last payment", last, Inputs.between("first payment", first, 1, periods), periods);
        double sum = 0;
        for (int k = first; k <= last; k++) {
            sum += interest(k);
        }
        return sum;
    }

    /**
     * Principal in payments from one to another (CUMPRINC).
     *
     * @param first first payment counted, from 1
     * @param last last payment counted, at most n
     * @return sum of the principal parts
     */
    public double cumulativePrincipal(int first, int last) {
        return (last - first + 1) * payment() - cumulativeInterest(first, last);
    }

    /**
     * What is owed at the end of period k, positive for a loan received: PV (1 + r)^k + PMT (1 + r·type)((1 + r)^k - 1)/r.
     *
     * @param k period, 0 to n
     * @return PV at k = 0, and -FV at k = n
     */
    public double balance(int k) {
        Inputs.between("period", k, 0, periods);
        return -Annuity.futureValue(rate, k, payment(), presentValue, time);
    }
}
