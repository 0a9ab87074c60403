package footing.core.money;

/** When in its period a payment of an annuity falls. */
public enum PaymentTime {
    /** At the end of each period, as loans are paid. */
    END,
    /** At the beginning of each period (annuity due), as leases are paid. */
    BEGINNING;

    /** What a payment is worth at the end of its period, per unit: 1, or 1 + rate if it is made at the beginning. */
    double valueAtEnd(double rate) {
        return this == END ? 1 : 1 + rate;
    }
}
