package footing.core.money;

import org.hipparchus.special.Erf;

/**
 * Unit normal loss L(z) = E max(0, Z - z) of a standard normal Z, and the value of knowing a normal quantity when two
 * payoffs are straight lines in it.
 */
public final class UnitNormalLoss {

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double ROOT_TWO = Math.sqrt(2);

    private UnitNormalLoss() {}

    /**
     * L(z) = φ(z) - z (1 - Φ(z)). Falls from -z far below 0 to 0 far above; L(-z) = L(z) + z. Relative accuracy about
     * 1e-15 · z² above 0. Source: standard tables of inventory textbooks.
     *
     * @param z any finite number
     * @return the loss, at least 0
     */
    public static double of(double z) {
        double density = Math.exp(-Inputs.finite("z", z) * z / 2) / ROOT_TWO_PI;
        return Math.max(0, density - z * Erf.erfc(z / ROOT_TWO) / 2);
    }

    /**
     * Expected value of perfect information about X ~ N(mean, deviation²) when two options' payoffs differ by slope ·
     * (X - breakEven): slope · σ · L(|breakEven - mean|/σ).
     *
     * @param slope difference of the payoffs per unit of X, at least 0
     * @param breakEven X at which the options are equal
     * @param mean of X
     * @param deviation standard deviation σ of X, above 0
     * @return in the unit of the payoffs
     */
    public static double perfectInformation(double slope, double breakEven, double mean, double deviation) {
        double distance = Math.abs(breakEven - mean) / Inputs.positive("deviation", deviation);
        return Inputs.notNegative("slope", slope) * deviation * of(distance);
    }
}
