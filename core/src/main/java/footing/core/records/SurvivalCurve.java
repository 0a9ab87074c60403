package footing.core.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The share of sets still running at each age, with no shape assumed: Kaplan and Meier's product of 1 − d/n over the
 * ages at which sets wore out, n those under observation just before. A set that was already worn when recording began
 * counts among them only from its entry on. Of a set that wears out and one that leaves at the same age the worn one
 * goes first.
 *
 * <p>Standard errors by Greenwood, limits on the scale of ln(−ln S), which stay between 0 and 1.
 *
 * <p>Source: E. L. Kaplan, P. Meier, "Nonparametric Estimation from Incomplete Observations", Journal of the American
 * Statistical Association 53 (1958) 457–481.
 */
public final class SurvivalCurve {
    private final List<Step> steps;

    /**
     * One age at which sets wore out.
     *
     * @param age hours of a set
     * @param atRisk sets under observation just before
     * @param wornOut of them
     * @param survival share that outlives this age
     * @param error Greenwood's standard error of it
     * @param hazard Nelson and Aalen's sum of d/n
     */
    public record Step(double age, int atRisk, int wornOut, double survival, double error, double hazard) {
        /** Limits of the share on the ln(−ln) scale; none below 1 or above 0 can be given for a share of 0 or 1. */
        public Limits limits(double share) {
            if (!(survival > 0 && survival < 1)) {
                return new Limits(0, 1);
            }
            double z = new NormalDistribution().inverseCumulativeProbability((1 + Limits.checked(share)) / 2);
            double width = z * error / (survival * -Math.log(survival));
            return new Limits(Math.pow(survival, Math.exp(width)), Math.pow(survival, Math.exp(-width)));
        }

        /** Limits on the scale of ln S, by which the limits of the median are found. */
        private Limits logLimits(double share) {
            if (!(survival > 0)) {
                return new Limits(0, 0);
            }
            double z = new NormalDistribution().inverseCumulativeProbability((1 + Limits.checked(share)) / 2);
            double width = Math.exp(z * error / survival);
            return new Limits(survival / width, Math.min(survival * width, 1));
        }
    }

    private SurvivalCurve(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    public static SurvivalCurve of(List<Life> lives) {
        double[] ages = lives.stream()
                .filter(Life::wornOut)
                .mapToDouble(Life::exit)
                .sorted()
                .distinct()
                .toArray();
        List<Step> steps = new ArrayList<>();
        double survival = 1;
        double greenwood = 0;
        double hazard = 0;
        for (double age : ages) {
            int atRisk = (int) lives.stream()
                    .filter(l -> l.entry() < age && l.exit() >= age)
                    .count();
            int worn = (int)
                    lives.stream().filter(l -> l.wornOut() && l.exit() == age).count();
            survival *= 1 - (double) worn / atRisk;
            greenwood += (double) worn / atRisk / (atRisk - worn);
            hazard += (double) worn / atRisk;
            double error = survival > 0 ? survival * Math.sqrt(greenwood) : 0;
            steps.add(new Step(age, atRisk, worn, survival, error, hazard));
        }
        return new SurvivalCurve(steps);
    }

    public List<Step> steps() {
        return steps;
    }

    /** The first age which no more than half of the sets outlive; empty if more than half always do. */
    public OptionalDouble median() {
        return first(Step::survival);
    }

    /**
     * Limits of the median: the first ages at which the lower and the upper limit of the share (on the scale of ln S) are
     * down to a half; empty if not even the lower one ever is, and without an upper end if the upper one isn't.
     *
     * <p>Source: R. Brookmeyer, J. Crowley, "A Confidence Interval for the Median Survival Time", Biometrics 38 (1982)
     * 29–41 (from memory).
     */
    public Optional<Limits> medianLimits(double share) {
        OptionalDouble low = first(s -> s.logLimits(share).low());
        OptionalDouble high = first(s -> s.logLimits(share).high());
        return low.isEmpty()
                ? Optional.empty()
                : Optional.of(new Limits(low.getAsDouble(), high.orElse(Double.POSITIVE_INFINITY)));
    }

    private OptionalDouble first(ToDoubleFunction<Step> share) {
        return steps.stream()
                .filter(s -> share.applyAsDouble(s) <= 0.5 + 1e-12)
                .mapToDouble(Step::age)
                .findFirst();
    }
}
