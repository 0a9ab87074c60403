package footing.core.records;

import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * What is known of an assembly's lives after its records: median life and Weibull shape on a grid, prior times
 * likelihood. Without records it is the prior; few leave it wide.
 */
public final class LifePosterior {
    private static final double LN2 = Math.log(2);
    private final Posterior median;

    private final Posterior shape;

    private LifePosterior(Grid grid) {
        median = grid.first();
        shape = grid.second();
    }

    /**
     * What is known after the records.
     *
     * @param lives of single sets, possibly none
     * @param bought purchases of periods for which no single lives are known, possibly none
     */
    public static LifePosterior of(List<Life> lives, List<Bought> bought, LifePrior prior) {
        Lives seen = lives.isEmpty() ? null : new Lives(lives);
        return new LifePosterior(Grid.of(
                (lnMedian, lnShape) -> {
                    double shape = Math.exp(lnShape);
                    double scale = Math.exp(lnMedian - Math.log(LN2) / shape);
                    double log = prior.log(lnMedian, lnShape);
                    log += seen == null ? 0 : seen.logLikelihood(shape, scale);
                    return log + logBought(bought, scale, shape);
                },
                prior.box()));
    }

    private static double logBought(List<Bought> bought, double scale, double shape) {
        if (bought.isEmpty()) {
            return 0;
        }
        double first = Gamma.gamma(1 + 1 / shape);
        double second = Gamma.gamma(1 + 2 / shape);
        double variation = Math.sqrt(Math.max(second / (first * first) - 1, 0));
        return bought.stream()
                .mapToDouble(b -> b.logLikelihood(scale * first, variation))
                .sum();
    }

    /** What is known of the median life, in hours. */
    public Posterior median() {
        return median;
    }

    public Posterior shape() {
        return shape;
    }

    /** The life that a share p of the sets don't reach, at the middle of what is known. */
    public double life(double p) {
        return median.median() * Math.pow(-Math.log1p(-Limits.checked(p)) / LN2, 1 / shape.median());
    }
}
