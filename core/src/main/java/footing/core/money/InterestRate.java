package footing.core.money;

/**
 * Conversions between ways of stating a rate.
 *
 * <p>Rates are shares; a rate of -1 or less, or a number of periods that is not positive, throws
 * {@link IllegalArgumentException}. Source: OpenDocument OpenFormula 1.2 (EFFECT, NOMINAL, FVSCHEDULE, RRI); I. Fisher's
 * relation for the real rate.
 */
public final class InterestRate {

    private InterestRate() {}

    /**
     * Yearly rate that a quoted rate compounded m times a year amounts to: (1 + i/m)^m - 1.
     *
     * @param quoted i a year, i/m above -1
     * @param perYear m, at least 1
     * @return effective rate a year
     */
    public static double effective(double quoted, int perYear) {
        double periodic = quoted / Inputs.positive("perYear", perYear);
        return Math.expm1(perYear * Math.log1p(Inputs.rate(periodic)));
    }

    /**
     * Quoted rate, compounded m times a year, that amounts to an effective one: m · ((1 + e)^(1/m) - 1).
     *
     * @param effective e a year, above -1
     * @param perYear m, at least 1
     * @return quoted rate a year; divided by m it is the rate per period
     */
    public static double nominal(double effective, int perYear) {
        return perYear * periodic(effective, perYear);
    }

    /**
     * Rate per period that compounds to an effective yearly rate: (1 + e)^(1/m) - 1. For discounting; a loan's monthly
     * rate is its quoted rate over 12 instead.
     *
     * @param effective e a year, above -1
     * @param perYear m, at least 1
     * @return rate per period
     */
    public static double periodic(double effective, int perYear) {
        return Math.expm1(Math.log1p(Inputs.rate(effective)) / Inputs.positive("perYear", perYear));
    }

    /**
     * Rate above inflation: (1 + i)/(1 + f) - 1. Some publications subtract (i - f) instead, which is larger by about
     * f · (i - f).
     *
     * @param nominal i, above -1
     * @param inflation f, above -1
     * @return real rate
     */
    public static double real(double nominal, double inflation) {
        return (Inputs.rate(nominal) - Inputs.rate(inflation)) / (1 + inflation);
    }

    /**
     * An amount after growing at a different rate each period: amount · Π (1 + r_i).
     *
     * @param amount at the start, finite
     * @param rates one per period, each above -1
     * @return amount at the end
     */
    public static double compounded(double amount, double... rates) {
        double value = Inputs.finite("amount", amount);
        for (double rate : rates) {
            value *= 1 + Inputs.rate(rate);
        }
        return value;
    }

    /**
     * Constant growth per period that leads from one value to another: (end/start)^(1/n) - 1.
     *
     * @param periods n, above 0
     * @param start above 0
     * @param end above 0
     * @return growth per period
     */
    public static double growth(double periods, double start, double end) {
        double ratio = Inputs.positive("end", end) / Inputs.positive("start", start);
        return Math.expm1(Math.log(ratio) / Inputs.positive("periods", periods));
    }
}
