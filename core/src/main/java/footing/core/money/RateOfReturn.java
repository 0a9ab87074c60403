package footing.core.money;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Internal and modified rates of return.
 *
 * <p>An internal rate is a rate above -1 at which the present value of the flows is 0. There may be none, one, or as
 * many as the flows change sign (Descartes); negative rates count. Lack of a rate is an empty result, never an error;
 * only a flow that is not finite, or a rate out of range, throws {@link IllegalArgumentException}.
 *
 * <p>With several rates the one nearest to 0 is returned, as the one of practical meaning; {@link #allInternal} gives
 * all. Rates from -1 + 1e-15 to 1e300 are searched. Source: OpenDocument OpenFormula 1.2 (IRR, XIRR, MIRR).
 */
public final class RateOfReturn {

    private RateOfReturn() {}

    /**
     * Internal rate of flows at times 0, 1, 2 … (IRR).
     *
     * @param flows one per period, the first today
     * @return rate per period, or empty when there is none
     */
    public static OptionalDouble internal(double... flows) {
        return nearestToZero(allInternal(flows));
    }

    /**
     * Every internal rate of flows at times 0, 1, 2 …
     *
     * @param flows one per period, the first today
     * @return rates per period in rising order, empty when there is none
     */
    public static double[] allInternal(double... flows) {
        double[] times = new double[flows.length];
        Arrays.setAll(times, i -> i);
        return rates(new ExponentialSum(times, Inputs.finite("flow", flows)));
    }

    /**
     * Internal rate of flows on given days (XIRR), with actual days over 365.
     *
     * @param flows in any order
     * @return effective rate a year, or empty when there is none
     */
    public static OptionalDouble internal(List<DatedFlow> flows) {
        if (flows.isEmpty()) {
            return OptionalDouble.empty();
        }
        LocalDate origin =
                flows.stream().map(DatedFlow::date).min(LocalDate::compareTo).orElseThrow();
        double[] times =
                flows.stream().mapToDouble(flow -> flow.yearsAfter(origin)).toArray();
        double[] amounts = flows.stream().mapToDouble(DatedFlow::amount).toArray();
        return nearestToZero(rates(ExponentialSum.ofUnordered(times, amounts)));
    }

    /**
     * Modified rate (MIRR): money out is financed at one rate, money in reinvested at another. With n flows at times 0
     * to n - 1, (FV of the positive flows at time n - 1 / -PV of the negative flows at time 0)^(1/(n - 1)) - 1.
     *
     * @param financeRate rate on negative flows per period, above -1
     * @param reinvestRate rate on positive flows per period, above -1
     * @param flows one per period, the first today
     * @return rate per period, -1 when nothing comes in; empty when nothing goes out or there are fewer than two flows
     */
    public static OptionalDouble modified(double financeRate, double reinvestRate, double... flows) {
        int periods = flows.length - 1;
        double[] in = Arrays.stream(flows).map(flow -> Math.max(flow, 0)).toArray();
        double[] out = Arrays.stream(flows).map(flow -> Math.max(-flow, 0)).toArray();
        double outNow = PresentValue.firstFlowNow(financeRate, out);
        double inNow = PresentValue.firstFlowNow(reinvestRate, in);
        if (periods < 1 || outNow == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((1 + reinvestRate) * Math.pow(inNow / outNow, 1.0 / periods) - 1);
    }

    private static double[] rates(ExponentialSum presentValue) {
        return Arrays.stream(presentValue.roots()).map(Math::expm1).toArray();
    }

    private static OptionalDouble nearestToZero(double[] rates) {
        return Arrays.stream(rates)
                .boxed()
                .min((a, b) -> Double.compare(Math.abs(a), Math.abs(b)))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
