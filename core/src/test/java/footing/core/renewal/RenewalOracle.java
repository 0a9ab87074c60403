package footing.core.renewal;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * What a simulation of sets that wear out and are renewed must come to, without simulating.
 *
 * <p>The first set is new at time 0; its purchase is not counted. Times in any unit, rates per that unit and continuous
 * (ln(1 + yearly rate) per year).
 */
public final class RenewalOracle {

    private static final int PANELS = 24;
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(24);

    private RenewalOracle() {}

    /** Mean and variance of a count or an amount. */
    public record Moments(double mean, double variance) {}

    /** Expected renewals in (0, t]: M = F + M * dF. */
    public static double renewals(Weibull life, double t) {
        return renewals(life::cumulative, life.shape(), t);
    }

    /** Expected renewals for any distribution that rises like t^order from 0 and is smooth after. */
    public static double renewals(DoubleUnaryOperator cumulative, double order, double t) {
        return StieltjesGrid.limit(cumulative, order, 0, t, grid -> last(grid.renewal()));
    }

    /** Variance of the renewals in (0, t]: M + 2 M * dM - M². */
    public static double renewalVariance(Weibull life, double t) {
        double mean = renewals(life, t);
        double convolved = StieltjesGrid.limit(life::cumulative, life.shape(), 0, t, grid -> {
            double[] renewals = grid.renewal();
            return last(StieltjesGrid.ofSteps(renewals).convolved(renewals));
        });
        return mean + 2 * convolved - mean * mean;
    }

    /** Probability of exactly so many renewals in (0, t]: F_k - F_(k + 1) of the k-fold convolutions. */
    public static double probability(Weibull life, int renewals, double t) {
        return atLeast(life, renewals, t) - atLeast(life, renewals + 1, t);
    }

    private static double atLeast(Weibull life, int renewals, double t) {
        if (renewals == 0) {
            return 1;
        }
        return StieltjesGrid.limit(life::cumulative, life.shape(), 0, t, grid -> {
            double[] sum = grid.cumulative();
            for (int k = 1; k < renewals; k++) {
                sum = grid.convolved(sum);
            }
            return last(sum);
        });
    }

    /** Expected cost of renewals in (0, horizon], each cost · e^(-rate t): D = cost G + D * dG, dG = e^(-rate t) dF. */
    public static double discountedCost(Weibull life, double rate, double horizon, double cost) {
        return discountedCost(life::cumulative, life.shape(), rate, horizon, cost);
    }

    /** The same for any distribution that rises like t^order from 0 and is smooth after. */
    public static double discountedCost(
            DoubleUnaryOperator cumulative, double order, double rate, double horizon, double cost) {
        return cost * StieltjesGrid.limit(cumulative, order, rate, horizon, grid -> last(grid.renewal()));
    }

    /** Expected cost of all renewals for ever: cost F*(rate)/(1 - F*(rate)). */
    public static double discountedCostForEver(double transform, double cost) {
        return cost * transform / (1 - transform);
    }

    /**
     * Laplace transform F*(rate) = E e^(-rate X) of a life, by F* = 1 - rate ∫ S(t) e^(-rate t) dt. With t = scale w⁴ the
     * integrand is smooth at 0 for every shape.
     */
    public static double laplace(Weibull life, double rate) {
        double z = rate * life.scale();
        double end = Math.pow(Math.min(Math.pow(45, 1 / life.shape()), 45 / z), 0.25);
        double step = end / PANELS;
        double integral = IntStream.range(0, PANELS)
                .mapToDouble(i -> panel(life.shape(), z, i * step, step))
                .sum();
        return 1 - z * integral;
    }

    private static double panel(double shape, double z, double from, double width) {
        return width
                / 2
                * GAUSS.integrate(x -> {
                    double w = from + width * (x + 1) / 2;
                    double v = Math.pow(w, 4);
                    return 4 * Math.pow(w, 3) * Math.exp(-Math.pow(v, shape) - z * v);
                });
    }

    /** Events of a Poisson process in (0, horizon], each cost · e^(-rate t) (Campbell); horizon may be infinite. */
    public static Moments poissonDiscountedCost(double perTime, double rate, double horizon, double cost) {
        double mean = cost * perTime * -Math.expm1(-rate * horizon) / rate;
        double variance = cost * cost * perTime * -Math.expm1(-2 * rate * horizon) / (2 * rate);
        return new Moments(mean, variance);
    }

    /**
     * Patched flats until the set is worn out, when flats by age t are Poisson with mean (t/scale)^power: E N =
     * E(X/scale)^power, Var N = E N + Var((X/scale)^power).
     */
    public static Moments flatsPerSet(Weibull life, double scale, double power) {
        double mean = life.moment(power) / Math.pow(scale, power);
        double square = life.moment(2 * power) / Math.pow(scale, 2 * power);
        return new Moments(mean, mean + square - mean * mean);
    }

    /** Probability that a set wears out without a flat: E exp(-(X/scale)^power). */
    public static double noFlat(Weibull life, double scale, double power) {
        double end = Math.pow(45, 1 / (4 * life.shape()));
        double step = end / PANELS;
        double k = life.shape();
        return IntStream.range(0, PANELS)
                .mapToDouble(i -> step
                        / 2
                        * GAUSS.integrate(x -> {
                            double w = i * step + step * (x + 1) / 2;
                            double v = Math.pow(w, 4);
                            double hazard = Math.pow(life.scale() * v / scale, power);
                            return 4 * k * Math.pow(w, 4 * k - 1) * Math.exp(-Math.pow(v, k) - hazard);
                        }))
                .sum();
    }

    /** Mean life of a set that ends worn out or by a fatal flat, whichever comes first: ∫ S(t) e^(-t/m) dt. */
    public static double meanLifeWithFatalFlats(Weibull life, double meanTimeToFlat) {
        return meanTimeToFlat * fatalFlatShare(life, meanTimeToFlat);
    }

    /** Share of sets that a fatal flat ends: 1 - F*(1/m). */
    public static double fatalFlatShare(Weibull life, double meanTimeToFlat) {
        return 1 - laplace(life, 1 / meanTimeToFlat);
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }
}
