package footing.core.records;

import org.hipparchus.special.Erf;

/**
 * Sets bought for renewal over a time in which the fleet's positions ran so many hours: what a shop that keeps no log
 * still has on paper.
 *
 * <p>Positions that have run for long are renewed hours/μ times on average, μ the mean life, with a variance of
 * c²·hours/μ + 1/6 for each position, c the coefficient of variation of lives and 1/6 that of where in a life the
 * watch begins and ends. A set on the shelf at either end adds another {@value #SHELF}. The count is taken for a
 * rounded normal.
 *
 * <p>Source: D. R. Cox, "Renewal Theory", Methuen 1962, section 4.5 (the asymptotic variance; from memory); the shelf
 * is common practice, no source.
 *
 * @param sets bought, in sets; a single tire is half a set of two
 * @param hours run by all positions that take such sets together
 * @param positions how many
 */
public record Bought(double sets, double hours, int positions) {
    private static final double SHELF = 0.5;

    public Bought {
        if (!(sets >= 0 && hours > 0 && positions > 0)) {
            throw new IllegalArgumentException(
                    sets + " sets bought over " + hours + " hours of " + positions + " positions");
        }
    }

    /** Log chance of buying so many if a set lasts {@code mean} hours with {@code variation} as c. */
    double logLikelihood(double mean, double variation) {
        double expected = hours / mean;
        double deviation = Math.sqrt(variation * variation * expected + positions / 6.0 + SHELF);
        double high = (sets + 0.5 - expected) / deviation;
        double low = sets == 0 ? Double.NEGATIVE_INFINITY : (sets - 0.5 - expected) / deviation;
        // From the nearer tail, so that the difference of two numbers near 1 is never taken.
        double chance = low > 0 ? tail(low) - tail(high) : tail(-high) - (sets == 0 ? 0 : tail(-low));
        return Math.log(Math.max(chance, Double.MIN_NORMAL));
    }

    private static double tail(double z) {
        return Erf.erfc(z / Math.sqrt(2)) / 2;
    }
}
