package footing.core.ground;

import footing.core.quantity.Angle;

/**
 * The slope at which the tires of a machine that stands still would begin to slide on an even surface of one friction.
 * Never a slope it is safe to mow.
 *
 * <p>Free casters carry no side force. Across a slope the drive tires hold all of it, W·sin θ, and the couple that keeps
 * the machine from turning downhill, W·sin θ·x/t on each: so it slides far below atan μ. Sources: derived.
 */
public final class SlopeHold {
    private static final int HALVINGS = 60;

    private SlopeHold() {}

    /** If every wheel could hold, as on a braked or steered machine: atan μ. For comparison only. */
    public static Angle everyWheel(double friction) {
        check(friction);
        return Angle.ofSlope(friction);
    }

    /** Straight up with the drive axle below: tan θ = μ(L − x)/(L − μh). */
    public static Angle climb(Stance s, double friction) {
        check(friction);
        double rest = s.wheelbase() - friction * s.height();
        return rest > 0 ? Angle.ofSlope(friction * (s.wheelbase() - s.ahead()) / rest) : Angle.ofDegrees(90);
    }

    /** Across with free casters, both drive tires loaded alike: tan θ = μ(1 − x/L)/√(1 + (2x/t)²); too favorable. */
    public static Angle acrossAtMost(Stance s, double friction) {
        check(friction);
        double couple = 2 * s.ahead() / s.track();
        return Angle.ofSlope(friction * (1 - s.ahead() / s.wheelbase()) / Math.hypot(1, couple));
    }

    /**
     * Across with free casters, the uphill drive tire relieved by the slope: the θ at which
     * √((μN_u)² − F²) + √((μN_d)² − F²) = W·sin θ with F = W·sin θ·x/t and N_d,u = (W·cos θ/2)(1 − x/L) ± W·h·sin θ/t.
     */
    public static Angle across(Stance s, double friction) {
        check(friction);
        double low = 0;
        double high = Math.atan(friction);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean holds = holds(s, friction, middle);
            low = holds ? middle : low;
            high = holds ? high : middle;
        }
        return new Angle(low);
    }

    /** Per unit of weight. */
    private static boolean holds(Stance s, double friction, double slope) {
        double sine = Math.sin(slope);
        double even = Math.cos(slope) / 2 * (1 - s.ahead() / s.wheelbase());
        double shift = s.height() * sine / s.track();
        double couple = sine * s.ahead() / s.track();
        double uphill = left(friction * (even - shift), couple);
        double downhill = left(friction * (even + shift), couple);
        return uphill + downhill >= sine;
    }

    /** What a tire can hold sideways beside its part of the couple; NaN, which holds nothing, if that is too much. */
    private static double left(double most, double couple) {
        return most >= 0 ? Math.sqrt(most * most - couple * couple) : Double.NaN;
    }

    private static void check(double friction) {
        if (!(friction > 0 && friction <= 2)) {
            throw new IllegalArgumentException("a friction coefficient must lie above 0 up to 2, not " + friction);
        }
    }
}
