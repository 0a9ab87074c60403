package footing.core.trial;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * The sign test: of the contests somebody won, how many would fall this unevenly by the toss of a coin. Contests that
 * end even are left out. Exact, both sides: 2·P(X ≤ min(wins, losses)), X binomial with ½.
 *
 * <p>Source: W. J. Conover, Practical Nonparametric Statistics (from memory); its values follow from the binomial.
 */
public record SignTest(int wins, int losses, int evens) {
    private static final int MOST = 1000;

    public SignTest {
        if (wins < 0 || losses < 0 || evens < 0) {
            throw new IllegalArgumentException("counts are not negative");
        }
    }

    public int decided() {
        return wins + losses;
    }

    public double p() {
        return decided() == 0 ? 1 : p(decided(), Math.min(wins, losses));
    }

    private static double p(int decided, int fewer) {
        return Math.min(1, 2 * new BinomialDistribution(decided, 0.5).cumulativeProbability(fewer));
    }

    /**
     * Contests with a winner that would show the winner four times in five, if one side wins a share of them.
     *
     * @param share the stronger side's, above one half and up to 1
     * @return at most 1000
     */
    public static int needed(double share, double alpha, double power) {
        if (!(share > 0.5 && share <= 1)) {
            throw new IllegalArgumentException("the stronger side wins more than half, not " + share);
        }
        for (int n = 1; n < MOST; n++) {
            int most = -1;
            while (p(n, most + 1) <= alpha && most + 1 <= n / 2) {
                most++;
            }
            if (most >= 0 && new BinomialDistribution(n, 1 - share).cumulativeProbability(most) >= power) {
                return n;
            }
        }
        return MOST;
    }
}
