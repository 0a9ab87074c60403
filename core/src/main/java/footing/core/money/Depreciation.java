package footing.core.money;

/**
 * Book depreciation per period: straight line and declining balance, with or without the switch to straight line.
 *
 * <p>Cost, salvage value and life are positive (salvage may be 0 and at most the cost), life is in whole periods, periods
 * count from 1, amounts are in currency units and not rounded. Anything else throws {@link IllegalArgumentException}.
 * Source: OpenDocument OpenFormula 1.2 (SLN, DDB, VDB).
 */
public final class Depreciation {

    private Depreciation() {}

    /**
     * Straight line (SLN): (cost - salvage) / life in every period.
     *
     * @param cost above 0
     * @param salvage value at the end of the life, 0 to cost
     * @param life periods, at least 1
     * @return depreciation of each period
     */
    public static double straightLine(double cost, double salvage, int life) {
        return (cost - salvage(cost, salvage)) / Inputs.positive("life", life);
    }

    /**
     * Declining balance (DDB): factor / life of what is left, never below the salvage value.
     *
     * @param cost above 0
     * @param salvage value at the end of the life, 0 to cost
     * @param life periods, at least 1
     * @param period 1 to life
     * @param factor 2 for double declining, above 0
     * @return depreciation of the period
     */
    public static double decliningBalance(double cost, double salvage, int life, int period, double factor) {
        Inputs.between("period", period, 1, life);
        double before = decliningValue(cost, salvage, life, period - 1, factor);
        return before - decliningValue(cost, salvage, life, period, factor);
    }

    /**
     * Declining balance with a switch to straight line over the rest of the life as soon as that is more (VDB with the
     * whole life from the start). The depreciation of periods 11 to 20 is the value after 10 less the value after 20.
     *
     * @param cost above 0
     * @param salvage value at the end of the life, 0 to cost
     * @param life periods, at least 1
     * @param periods passed, 0 to life
     * @param factor 2 for double declining, above 0
     * @return value left after so many periods
     */
    public static double valueAfter(double cost, double salvage, int life, int periods, double factor) {
        check(cost, salvage, life, factor);
        Inputs.between("periods", periods, 0, life);
        double value = cost;
        for (int period = 1; period <= periods; period++) {
            double straight = (value - salvage) / (life - period + 1);
            double declining = Math.min(value * Math.min(factor / life, 1), value - salvage);
            value -= Math.max(straight, declining);
        }
        return value;
    }

    private static double decliningValue(double cost, double salvage, int life, int periods, double factor) {
        check(cost, salvage, life, factor);
        double share = Math.min(factor / life, 1);
        return Math.max(salvage, cost * Math.pow(1 - share, periods));
    }

    private static void check(double cost, double salvage, int life, double factor) {
        salvage(cost, salvage);
        Inputs.positive("life", life);
        Inputs.positive("factor", factor);
    }

    private static double salvage(double cost, double salvage) {
        if (!(Inputs.notNegative("salvage", salvage) <= Inputs.positive("cost", cost))) {
            throw new IllegalArgumentException("salvage is " + salvage + ", must be from 0 to the cost of " + cost
                    + "\nSwap the two if they were given in the wrong order.");
        }
        return salvage;
    }
}
