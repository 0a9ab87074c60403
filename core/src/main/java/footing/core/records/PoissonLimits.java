package footing.core.records;

/**
 * Exact limits for the mean of a Poisson count, and so for a rate after dividing by the hours: low = ½χ²(α/2; 2x),
 * high = ½χ²(1−α/2; 2x+2).
 *
 * <p>They hold the truth at least as often as they say, whatever the truth is. With no event there is no lower limit
 * but 0, and what is known is an upper bound alone: {@link #upper}.
 *
 * <p>Source: F. Garwood, "Fiducial Limits for the Poisson Distribution", Biometrika 28 (1936) 437–442.
 */
public final class PoissonLimits {
    private PoissonLimits() {}

    /** Two-sided limits; the low one of no events is 0. */
    public static Limits of(int events, double share) {
        double tail = (1 - Limits.checked(share)) / 2;
        double low = events == 0 ? 0 : new GammaRate(checked(events), 1).quantile(tail);
        return new Limits(low, upper(events, 1 - tail));
    }

    /** What the mean stays below with the given confidence. */
    public static double upper(int events, double confidence) {
        return events == 0
                ? -Math.log1p(-Limits.checked(confidence))
                : new GammaRate(checked(events) + 1.0, 1).quantile(confidence);
    }

    private static int checked(int events) {
        if (events < 0) {
            throw new IllegalArgumentException("a count of " + events + " events, must be at least 0");
        }
        return events;
    }
}
