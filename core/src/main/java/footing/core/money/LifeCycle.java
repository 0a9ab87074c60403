package footing.core.money;

import java.util.Optional;

/**
 * Measures of whether an extra outlay pays over its life: net saving, saving-to-investment ratio, adjusted rate of
 * return and payback.
 *
 * <p>The outlay is the present value of everything the dearer alternative costs more to buy and replace, less what it
 * brings back at the end, a positive amount; savings fall at the end of years 1 to N and may be negative in a year. The
 * discount rate is a share a year above -1. Anything not finite or out of range throws
 * {@link IllegalArgumentException}.
 *
 * <p>Source: 10 CFR 436.20 to 436.23; NIST Handbook 135 (1995).
 */
public final class LifeCycle {

    private LifeCycle() {}

    /**
     * When the running total of savings has made good the outlay.
     *
     * @param year the first year at whose end the total covers the outlay and does so ever after; 0 if at once
     * @param years the same within the year, the year's saving spread evenly over it
     */
    public record Payback(int year, double years) {}

    /**
     * Net saving: present value of the savings less the outlay. Equal to the life-cycle cost of the base less that of
     * the alternative.
     *
     * @param rate discount rate a year, above -1
     * @param outlay present value of the extra investment
     * @param savings of years 1 to N
     * @return above 0 when the alternative pays
     */
    public static double netSaving(double rate, double outlay, double... savings) {
        return PresentValue.firstFlowAfterOnePeriod(rate, savings) - Inputs.finite("outlay", outlay);
    }

    /**
     * Saving-to-investment ratio SIR: present value of the savings over the outlay.
     *
     * @param rate discount rate a year, above -1
     * @param outlay present value of the extra investment, above 0
     * @param savings of years 1 to N
     * @return above 1 when the alternative pays
     */
    public static double savingToInvestmentRatio(double rate, double outlay, double... savings) {
        return PresentValue.firstFlowAfterOnePeriod(rate, savings) / Inputs.positive("outlay", outlay);
    }

    /**
     * Adjusted internal rate of return AIRR: the N-th root of (savings compounded to the end of year N at the discount
     * rate, over the outlay), less 1. The same as (1 + d) · SIR^(1/N) - 1.
     *
     * @param rate discount rate a year, at which savings are reinvested, above -1
     * @param outlay present value of the extra investment, above 0
     * @param savings of years 1 to N, at least one year; their value must not be negative
     * @return above the discount rate when the alternative pays
     */
    public static double adjustedRateOfReturn(double rate, double outlay, double... savings) {
        double ratio = Inputs.notNegative("ratio", savingToInvestmentRatio(rate, outlay, savings));
        Inputs.positive("years", savings.length);
        return (1 + rate) * Math.pow(ratio, 1.0 / savings.length) - 1;
    }

    /**
     * Years until the undiscounted savings equal the outlay.
     *
     * @param outlay extra investment
     * @param savings of years 1 to N
     * @return the payback, or empty when it lies beyond year N
     */
    public static Optional<Payback> simplePayback(double outlay, double... savings) {
        return discountedPayback(0, outlay, savings);
    }

    /**
     * Years until the discounted savings equal the outlay.
     *
     * @param rate discount rate a year, above -1
     * @param outlay present value of the extra investment
     * @param savings of years 1 to N
     * @return the payback, or empty when it lies beyond year N
     */
    public static Optional<Payback> discountedPayback(double rate, double outlay, double... savings) {
        double[] totals = cumulativeValues(rate, outlay, savings);
        int lastBelow = totals.length - 1;
        while (lastBelow >= 0 && totals[lastBelow] >= 0) {
            lastBelow--;
        }
        if (lastBelow < 0) {
            return Optional.of(new Payback(0, 0));
        }
        if (lastBelow == totals.length - 1) {
            return Optional.empty();
        }
        double missing = -totals[lastBelow];
        double saved = totals[lastBelow + 1] - totals[lastBelow];
        return Optional.of(new Payback(lastBelow + 1, lastBelow + missing / saved));
    }

    /**
     * Running total of the discounted flows.
     *
     * @param rate discount rate a year, above -1
     * @param outlay present value of the extra investment
     * @param savings of years 1 to N
     * @return N + 1 totals, the first -outlay, the last the net saving
     */
    public static double[] cumulativeValues(double rate, double outlay, double... savings) {
        double[] totals = new double[savings.length + 1];
        totals[0] = -Inputs.finite("outlay", outlay);
        Inputs.finite("saving", savings);
        for (int year = 1; year < totals.length; year++) {
            totals[year] = totals[year - 1] + savings[year - 1] * DiscountFactor.single(rate, year);
        }
        return totals;
    }
}
