package footing.core.renewal;

import org.hipparchus.special.Gamma;

/** Life with survival function exp(-(t/scale)^shape). */
public record Weibull(double shape, double scale) {

    public Weibull {
        if (!(shape > 0 && scale > 0)) {
            throw new IllegalArgumentException("shape " + shape + " and scale " + scale + " must be above 0");
        }
    }

    /** The life of this shape with a given mean. */
    public static Weibull withMean(double shape, double mean) {
        return new Weibull(shape, mean / Gamma.gamma(1 + 1 / shape));
    }

    public double cumulative(double t) {
        return t <= 0 ? 0 : -Math.expm1(-Math.pow(t / scale, shape));
    }

    public double survival(double t) {
        return t <= 0 ? 1 : Math.exp(-Math.pow(t / scale, shape));
    }

    /** E X^power = scale^power · Γ(1 + power/shape). */
    public double moment(double power) {
        return Math.pow(scale, power) * Gamma.gamma(1 + power / shape);
    }

    public double mean() {
        return moment(1);
    }

    /** Squared coefficient of variation. */
    public double squaredVariation() {
        return moment(2) / (mean() * mean()) - 1;
    }

    /** Inverse of {@link #cumulative}. */
    public double quantile(double probability) {
        return scale * Math.pow(-Math.log1p(-probability), 1 / shape);
    }
}
