package footing.core.ground;

import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;

/**
 * What a tire may carry at another pressure than its rating's: load goes with pressure to the power 0.585, never above
 * the rating. Its maker's own table comes first; this only interpolates.
 *
 * <p>For air tires at half their rated pressure and more. Source: the classic law of bias-ply tires (from memory).
 */
public record LoadRating(Mass most, Pressure at) {
    private static final double POWER = 0.585;

    public LoadRating {
        Require.above("a load rating", 0, most.kilograms());
        Require.above("the pressure of a rating", 0, at.pascals());
    }

    /** Load at pressure {@code to} over load at pressure {@code from}. */
    public static double factor(double from, double to) {
        Require.above("a pressure", 0, from);
        Require.above("a pressure", 0, to);
        return Math.pow(to / from, POWER);
    }

    public Judged<Mass> at(Pressure inflation) {
        Require.above("a pressure", 0, inflation.pascals());
        if (!(inflation.pascals() >= at.pascals() / 2)) {
            return Judged.outside("less than half the pressure its rating is for: look the load up at this pressure");
        }
        double factor = Math.min(1, factor(at.pascals(), inflation.pascals()));
        return Judged.of(new Mass(most.kilograms() * factor));
    }
}
