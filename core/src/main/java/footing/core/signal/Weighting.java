package footing.core.signal;

import org.hipparchus.complex.Complex;

/**
 * Frequency weighting of whole-body vibration: H(s) = Hₕ·Hₗ·Hₜ·Hₛ, a high pass at f₁, a low pass at f₂ (both of
 * Butterworth's kind), the transition from acceleration to velocity at f₃, f₄, and for Wk a step at f₅, f₆.
 *
 * <p>Holds for any frequency above zero. Source: ISO 2631-1:1997, annex A, with the parameters of ISO 8041, as
 * reprinted in an instrument's manual. The printed table of Wd reads 212 at 10 Hz, where the standard's own function
 * gives 202: the function is followed.
 */
public enum Weighting {
    /** Vertical, on the seat or platform. */
    WK(12.5, 12.5, true),
    /** Fore and aft or sideways. */
    WD(2, 2, false);

    private static final double HIGH_PASS = 0.4;
    private static final double LOW_PASS = 100;
    private static final double Q_BAND = Math.sqrt(0.5);
    private static final double Q4 = 0.63;
    private static final double F5 = 2.37;
    private static final double F6 = 3.35;
    private static final double Q_STEP = 0.91;

    private final double f3;
    private final double f4;
    private final boolean step;

    Weighting(double f3, double f4, boolean step) {
        this.f3 = f3;
        this.f4 = f4;
        this.step = step;
    }

    /** The complex factor at a frequency in hertz; all ratios are of frequencies, so 2π cancels. */
    public Complex at(double frequency) {
        if (!(frequency >= 0 && frequency < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a frequency is not negative: " + frequency);
        }
        double toHigh = frequency / HIGH_PASS;
        Complex high = new Complex(-toHigh * toHigh).divide(quadratic(frequency, HIGH_PASS, Q_BAND));
        Complex low = quadratic(frequency, LOW_PASS, Q_BAND).reciprocal();
        Complex transition = new Complex(1, frequency / f3).divide(quadratic(frequency, f4, Q4));
        Complex all = high.multiply(low).multiply(transition);
        if (!step) {
            return all;
        }
        double ratio = F5 / F6;
        return all.multiply(quadratic(frequency, F5, Q_STEP).divide(quadratic(frequency, F6, Q_STEP)))
                .multiply(ratio * ratio);
    }

    /** By how much an amplitude at a frequency counts. */
    public double factor(double frequency) {
        return at(frequency).norm();
    }

    /** 1 + s/(Q·w) + (s/w)² at s = 2πi·f. */
    private static Complex quadratic(double frequency, double corner, double q) {
        double x = frequency / corner;
        return new Complex(1 - x * x, x / q);
    }
}
