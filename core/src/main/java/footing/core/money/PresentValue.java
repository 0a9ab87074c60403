package footing.core.money;

import java.time.LocalDate;
import java.util.List;

/**
 * Present value of a series of flows.
 *
 * <p>Flows are in currency units, money in positive; the rate is per period (per year for dated flows), any share
 * above -1. A flow that is not finite or a rate out of range throws {@link IllegalArgumentException}.
 *
 * <p>Source: OpenDocument OpenFormula 1.2, functions NPV and XNPV.
 */
public final class PresentValue {

    private PresentValue() {}

    /**
     * Flows at the end of periods 1, 2, 3 …: Σ flow_i / (1 + rate)^i with i from 1. This is NPV of a spreadsheet; an
     * outlay today must be added to it, not put first.
     *
     * @param rate discount rate per period, above -1
     * @param flows one per period
     * @return the value today, 0 without flows
     */
    public static double firstFlowAfterOnePeriod(double rate, double... flows) {
        return firstFlowNow(rate, flows) / (1 + rate);
    }

    /**
     * Flows at times 0, 1, 2 …: Σ flow_i / (1 + rate)^i with i from 0. The first flow is today's and not discounted.
     *
     * @param rate discount rate per period, above -1
     * @param flows one per period, the first today
     * @return the value today, 0 without flows
     */
    public static double firstFlowNow(double rate, double... flows) {
        double growth = 1 + Inputs.rate(rate);
        Inputs.finite("flow", flows);
        double sum = 0;
        for (int i = flows.length - 1; i >= 0; i--) {
            sum = sum / growth + flows[i];
        }
        return sum;
    }

    /**
     * Flows on given days: Σ flow_i / (1 + rate)^(days from the first flow / 365). This is XNPV, here for any rate above
     * -1. The order matters only in that the first flow's day is time 0; earlier days are compounded.
     *
     * @param yearlyRate effective rate a year, above -1
     * @param flows any number of flows
     * @return the value on the day of the first flow, 0 without flows
     */
    public static double ofDatedFlows(double yearlyRate, List<DatedFlow> flows) {
        double logGrowth = Math.log1p(Inputs.rate(yearlyRate));
        if (flows.isEmpty()) {
            return 0;
        }
        LocalDate origin = flows.get(0).date();
        return flows.stream()
                .mapToDouble(flow -> flow.amount() * Math.exp(-flow.yearsAfter(origin) * logGrowth))
                .sum();
    }
}
