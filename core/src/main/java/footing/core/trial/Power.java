package footing.core.trial;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How many pairs a question needs. Effects and margins are in standard deviations of a pair's difference; a number of
 * pairs may be a fraction, as tables of power print it.
 *
 * <p>Given the measured spread s (in units of the true one), t has a normal distribution, so both powers are means of
 * normal probabilities over s², which is χ²(ν)/ν: a found difference needs |t| above t₀, so its power is the mean of
 * Φ(δ√n − t₀s) + Φ(−δ√n − t₀s), which is the noncentral t; alike needs the mean to lie t₀s/√n inside the margin. The
 * mean is taken by the trapezoid rule over ln s²: exact to twelve digits for a difference; for alike, where the chance has
 * an edge at zero, to five.
 *
 * <p>Sources: J. Cohen, Statistical Power Analysis for the Behavioral Sciences (from memory); Schuirmann (1987).
 */
public final class Power {
    /** One chance in twenty of a wrong claim. */
    public static final double ALPHA = 0.05;

    /** Four in five that what is there is found. */
    public static final double USUAL = 0.80;

    /** More pairs than anybody runs. */
    public static final int MOST_PAIRS = 1000;

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double NEGLIGIBLE = -45;
    private static final double STEPS_PER_SPREAD = 16;
    private static final double TOLERANCE = 1e-9;
    private static final int MOST_EVALUATIONS = 200;

    private Power() {}

    /** The chance that a true difference is shown at a two-sided level. */
    public static double ofDifference(double effect, double pairs, double alpha) {
        check(pairs, alpha);
        double shift = Math.abs(effect) * Math.sqrt(pairs);
        double critical = new TDistribution(pairs - 1).inverseCumulativeProbability(1 - alpha / 2);
        return overSpread(pairs - 1, s -> phi(shift - critical * s) + phi(-shift - critical * s));
    }

    /** The chance that two things are shown to be alike, each side tested at a level, at a true difference. */
    public static double ofAlike(double margin, double difference, double pairs, double alpha) {
        check(pairs, alpha);
        double root = Math.sqrt(pairs);
        double critical = new TDistribution(pairs - 1).inverseCumulativeProbability(1 - alpha);
        return overSpread(pairs - 1, s -> {
            double reach = margin * root - critical * s;
            return reach <= 0 ? 0 : phi(reach - difference * root) - phi(-reach - difference * root);
        });
    }

    /** The pairs with which a difference is shown with a power; a fraction, at least 2. */
    public static double pairsForDifference(double effect, double power, double alpha) {
        if (ofDifference(effect, 2, alpha) >= power) {
            return 2;
        }
        if (ofDifference(effect, MOST_PAIRS, alpha) < power) {
            return MOST_PAIRS;
        }
        return new BrentSolver(TOLERANCE)
                .solve(MOST_EVALUATIONS, n -> ofDifference(effect, n, alpha) - power, 2, MOST_PAIRS);
    }

    /** The fewest whole pairs with which two things that don't differ are shown to be alike. */
    public static int pairsForAlike(double margin, double power, double alpha) {
        double guess = pairsForAlikeRoughly(margin, power, alpha);
        for (int n = (int) Math.max(2, Math.min(MOST_PAIRS, Math.floor(guess))); n < MOST_PAIRS; n++) {
            if (ofAlike(margin, 0, n, alpha) >= power) {
                return n;
            }
        }
        return MOST_PAIRS;
    }

    /** The same as if the spread were known: (z(1−α) + z(1−(1−power)/2))²/margin². A lower bound. */
    public static double pairsForAlikeRoughly(double margin, double power, double alpha) {
        if (!(margin > 0)) {
            throw new IllegalArgumentException("a margin is above zero, not " + margin);
        }
        double z = NORMAL.inverseCumulativeProbability(1 - alpha)
                + NORMAL.inverseCumulativeProbability(1 - (1 - power) / 2);
        return z * z / (margin * margin);
    }

    /** The mean of g over the measured spread, in units of the true one. */
    private static double overSpread(double freedom, DoubleUnaryOperator g) {
        double step = Math.sqrt(2 / freedom) / STEPS_PER_SPREAD;
        double[] sums = new double[2];
        add(sums, freedom, 0, g);
        for (int way = -1; way <= 1; way += 2) {
            int i = 1;
            while (add(sums, freedom, way * i * step, g)) {
                i++;
            }
        }
        return sums[1] / sums[0];
    }

    /** Adds the weight at y = ln s² and the weighted value; false where the weight no longer counts. */
    private static boolean add(double[] sums, double freedom, double y, DoubleUnaryOperator g) {
        double logWeight = freedom / 2 * (y - Math.expm1(y));
        double weight = Math.exp(logWeight);
        sums[0] += weight;
        sums[1] += weight * g.applyAsDouble(Math.exp(y / 2));
        return logWeight > NEGLIGIBLE;
    }

    private static double phi(double x) {
        return NORMAL.cumulativeProbability(x);
    }

    private static void check(double pairs, double alpha) {
        if (!(pairs > 1 && alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("no power of " + pairs + " pairs at level " + alpha);
        }
    }
}
