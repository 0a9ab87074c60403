package footing.core.answer;

import footing.core.chance.Sample;

/** A saving over the futures; {@code chance} is the share of them in which it is positive. */
public record Saving(double mean, double standardError, double p10, double p50, double p90, double chance) {
    /** That of the carried package against itself. */
    static final Saving NONE = new Saving(0, 0, 0, 0, 0, 0);

    static Saving of(double[] values) {
        Estimate e = Estimate.of(values);
        return new Saving(e.mean(), e.standardError(), e.p10(), e.p50(), e.p90(), Sample.shareAboveZero(values));
    }
}
