package footing.core.ground;

import footing.core.quantity.Angle;
import footing.core.quantity.Mass;

/**
 * What the wheels carry on a slope, as a scale would show it there: N = (W/2)·cos θ ± W·h·sin θ/t across, and
 * N_rear = W·[cos θ·(L − x) + h·sin θ]/L up. Equal tracks, center of gravity in the middle, nothing moving.
 *
 * <p>Source: derived.
 *
 * @param lower the downhill side, or the axle that is lower
 * @param upper the other one
 */
public record SlopeLoads(Mass lower, Mass upper) {
    /** Across the slope: both wheels of a side together. */
    public static Judged<SlopeLoads> across(Stance s, Angle slope) {
        double even = s.mass().kilograms() / 2 * Math.cos(slope.radians());
        double shift = s.mass().kilograms() * s.height() * Math.sin(slope.radians()) / s.track();
        return loads(even + shift, even - shift, "the uphill wheels would have lifted: it tips before");
    }

    /** Up the slope with the drive axle below: the axle loads. */
    public static Judged<SlopeLoads> up(Stance s, Angle slope) {
        double cosine = Math.cos(slope.radians());
        double lift = s.height() * Math.sin(slope.radians());
        double drive = s.mass().kilograms() * (cosine * (s.wheelbase() - s.ahead()) + lift) / s.wheelbase();
        double caster = s.mass().kilograms() * (s.ahead() * cosine - lift) / s.wheelbase();
        return loads(drive, caster, "the casters would have lifted: it tips before");
    }

    private static Judged<SlopeLoads> loads(double lower, double upper, String tipped) {
        Require.finite("a load", lower);
        return upper >= 0 ? Judged.of(new SlopeLoads(new Mass(lower), new Mass(upper))) : Judged.outside(tipped);
    }
}
