package footing.core.records;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Gamma;

/**
 * What is known of a rate of events per hour: a gamma distribution with density b^a λ^(a−1) e^(−bλ)/Γ(a).
 *
 * <p>It is as if {@code shape} events had been seen in {@code rate} hours, so records are added by adding. Quantiles
 * are solved on the logarithm, to a relative 1e-12 (a quantile to an absolute accuracy would be useless for a rate of
 * a few in a thousand hours).
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.2.5 and 8.4.6.
 *
 * @param shape a, above 0
 * @param rate b, in hours, above 0
 */
public record GammaRate(double shape, double rate) {
    public GammaRate {
        if (!(shape > 0 && rate > 0 && shape < Double.POSITIVE_INFINITY && rate < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "shape " + shape + " and rate " + rate + " must both be finite and above 0");
        }
    }

    /**
     * From two judgements: half the time the hours between events are below {@code typical}; they are above {@code
     * bad} with the given confidence.
     */
    public static GammaRate ofJudgements(double typical, double bad, double confidence) {
        if (!(bad > 0 && typical > bad && confidence > 0.5 && confidence < 1)) {
            throw new IllegalArgumentException("typical hours " + typical + " must be above bad hours " + bad
                    + ", held with a confidence between 0.5 and 1, not " + confidence);
        }
        double ratio = Math.log(typical / bad);
        DoubleUnaryOperator f = lnShape -> {
            GammaRate unit = new GammaRate(Math.exp(lnShape), 1);
            return Math.log(unit.quantile(confidence) / unit.quantile(0.5)) - ratio;
        };
        double shape = Math.exp(Roots.between(f, Math.log(0.02), Math.log(1e5)));
        return new GammaRate(shape, new GammaRate(shape, 1).quantile(0.5) * typical);
    }

    /** The same knowledge after more records: so many events in so many hours. */
    public GammaRate after(double events, double hours) {
        return new GammaRate(shape + events, rate + hours);
    }

    public double mean() {
        return shape / rate;
    }

    public double variance() {
        return shape / rate / rate;
    }

    public double cumulative(double x) {
        return x <= 0 ? 0 : Gamma.regularizedGammaP(shape, rate * x);
    }

    /** The chance of more than x. */
    public double survival(double x) {
        return x <= 0 ? 1 : Gamma.regularizedGammaQ(shape, rate * x);
    }

    public double quantile(double p) {
        Limits.checked(p);
        DoubleUnaryOperator f = p <= 0.5
                ? z -> Math.log(Gamma.regularizedGammaP(shape, Math.exp(z)) / p)
                : z -> Math.log((1 - p) / Gamma.regularizedGammaQ(shape, Math.exp(z)));
        double start = start(p);
        double step = f.applyAsDouble(start) < 0 ? 0.5 : -0.5;
        double z = Roots.outward(f, start, step, 1e6).orElse(start);
        return Math.exp(z) / rate;
    }

    /** Near the quantile's logarithm: by the leading term of the series far below, else by the cube root. */
    private double start(double p) {
        double series = (Math.log(p) + Gamma.logGamma(shape + 1)) / shape;
        return series < Math.log(0.2 * shape) ? series : Math.log(shape);
    }

    public Limits limits(double share) {
        double tail = (1 - Limits.checked(share)) / 2;
        return new Limits(quantile(tail), quantile(1 - tail));
    }

    /**
     * The chance of exactly n events in so many hours to come: negative binomial,
     * Γ(a+n)/(Γ(a) n!) · p^a (1−p)^n with p = b/(b+hours).
     */
    public double chanceOf(int n, double hours) {
        if (!(n >= 0 && hours > 0)) {
            throw new IllegalArgumentException(n + " events in " + hours + " hours: neither may be below 0");
        }
        double logP = -Math.log1p(hours / rate);
        double logQ = Math.log(hours / (rate + hours));
        return Math.exp(
                Gamma.logGamma(shape + n) - Gamma.logGamma(shape) - Gamma.logGamma(n + 1.0) + shape * logP + n * logQ);
    }
}
