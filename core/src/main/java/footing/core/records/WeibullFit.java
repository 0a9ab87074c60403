package footing.core.records;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Lives of sets by maximum likelihood: S(t) = exp(−(t/η)^β), with right censoring and left truncation.
 *
 * <p>β solves Σ t^β ln t / Σ t^β − 1/β − Σ_worn ln t / d = 0, sums over exits less entries, d the number worn out; η
 * = (Σ t^β / d)^(1/β). With μ = ln η and σ = 1/β come the variances by the observed information. A shape above 1 means
 * that sets wear out; {@link #shapeEstablished} says whether the records show it at all.
 *
 * <p>Source: W. Q. Meeker, L. A. Escobar, "Statistical Methods for Reliability Data", Wiley 1998, chapters 8 and 11
 * (from memory).
 */
public final class WeibullFit {
    private static final double LEAST_SHAPE = 0.02;
    private static final double MOST_SHAPE = 200;
    private static final int SCAN = 60;
    /** Limits are looked for within a factor e^20 of the best value. */
    private static final double FARTHEST = 20;

    private final Lives lives;
    private final double shape;
    private final double scale;

    private WeibullFit(Lives lives, double shape) {
        this.lives = lives;
        this.shape = shape;
        this.scale = lives.scale(shape);
    }

    /** The best fit; empty if no set wore out or no finite shape is the best, as with a single life. */
    public static Optional<WeibullFit> of(List<Life> seen) {
        if (seen.stream().noneMatch(Life::wornOut)) {
            return Optional.empty();
        }
        Lives lives = new Lives(seen);
        double step = Math.log(MOST_SHAPE / LEAST_SHAPE) / SCAN;
        double best = Double.NaN;
        for (int i = 0; i < SCAN; i++) {
            double low = LEAST_SHAPE * Math.exp(i * step);
            double high = low * Math.exp(step);
            if (lives.score(low) > 0 && lives.score(high) <= 0) {
                double root = Roots.between(lives::score, low, high);
                boolean better = Double.isNaN(best) || profile(lives, root) > profile(lives, best);
                best = better ? root : best;
            }
        }
        return Double.isNaN(best) ? Optional.empty() : Optional.of(new WeibullFit(lives, best));
    }

    public double shape() {
        return shape;
    }

    public double scale() {
        return scale;
    }

    /** Sets that wore out while they were watched. */
    public int wornOut() {
        return lives.worn;
    }

    public double logLikelihood() {
        return lives.logLikelihood(shape, scale);
    }

    public double quantile(double p) {
        return scale * Math.pow(-Math.log1p(-Limits.checked(p)), 1 / shape);
    }

    /** The share of sets that outlive t hours. */
    public double survival(double t) {
        return Math.exp(-Math.pow(t / scale, shape));
    }

    /** Variances and covariance of μ = ln η and σ = 1/β. */
    public record Covariance(double mu, double sigma, double both) {}

    /** By the inverse of the observed information, z = (ln t − μ)/σ: Σe^z, Σze^z and Σz²e^z over σ². */
    public Covariance covariance() {
        double log = Math.log(scale / lives.unit);
        Lives.Powers p = lives.powers(shape);
        double per = Math.exp(-shape * log);
        double once = shape * per * (p.once() - log * p.plain());
        double twice = shape * shape * per * (p.twice() - 2 * log * p.once() + log * log * p.plain());
        double squares = shape * shape;
        double mu = squares * lives.worn;
        double both = squares * once;
        double sigma = squares * (lives.worn + twice);
        double determinant = mu * sigma - both * both;
        return new Covariance(sigma / determinant, mu / determinant, -both / determinant);
    }

    /** Likelihood-ratio limits of the shape. */
    public Limits shapeLimits(double share) {
        return limits(Math.log(shape), ln -> profile(lives, Math.exp(ln)), share);
    }

    /** Likelihood-ratio limits of the age that a share p of the sets don't reach; 0.5 for the median life. */
    public Limits quantileLimits(double p, double share) {
        double hazard = -Math.log1p(-Limits.checked(p));
        return limits(Math.log(quantile(p)), ln -> atQuantile(Math.exp(ln), hazard), share);
    }

    /** Twice the log likelihood gained over lives without memory (shape 1): chi-squared with one degree of freedom. */
    public double gainOverNoMemory() {
        return 2 * (logLikelihood() - profile(lives, 1));
    }

    /** True if lives without memory can be ruled out at the given confidence. */
    public boolean shapeEstablished(double confidence) {
        return gainOverNoMemory() > new ChiSquaredDistribution(1).inverseCumulativeProbability(confidence);
    }

    private static double profile(Lives lives, double shape) {
        return lives.logLikelihood(shape, lives.scale(shape));
    }

    /** The best log likelihood if the given share has gone at t: over all shapes with t^β/η^β fixed. */
    private double atQuantile(double t, double hazard) {
        double log = Math.log(t / lives.unit);
        DoubleUnaryOperator slope = lnShape -> {
            double b = Math.exp(lnShape);
            Lives.Powers p = lives.powers(b);
            return lives.worn / b
                    + lives.logs
                    - lives.worn * log
                    - hazard * Math.exp(-b * log) * (p.once() - log * p.plain());
        };
        double start = Math.log(shape);
        double step = slope.applyAsDouble(start) > 0 ? 0.2 : -0.2;
        double best = Math.exp(Roots.outward(slope, start, step, 8).orElse(start));
        return lives.logLikelihood(best, t / Math.pow(hazard, 1 / best));
    }

    private Limits limits(double best, DoubleUnaryOperator profile, double share) {
        double drop = new ChiSquaredDistribution(1).inverseCumulativeProbability(Limits.checked(share)) / 2;
        double floor = logLikelihood() - drop;
        DoubleUnaryOperator above = x -> profile.applyAsDouble(x) - floor;
        OptionalDouble low = Roots.outward(above, best, -0.05, FARTHEST);
        OptionalDouble high = Roots.outward(above, best, 0.05, FARTHEST);
        return new Limits(
                low.isPresent() ? Math.exp(low.getAsDouble()) : 0,
                high.isPresent() ? Math.exp(high.getAsDouble()) : Double.POSITIVE_INFINITY);
    }
}
