package footing.core.ground;

import footing.core.quantity.Length;

/**
 * What a wheel's size does to speed. A rolling radius from the loaded one: r = 2.5·SLR / (1.5 + SLR/r₀), r₀ half the
 * unloaded diameter. With the same hydraulic drive ground speed goes with r, pull at the same pressure against it, and
 * a machine whose left and right wheels differ drifts on a circle of t·r̄/(r_L − r_R).
 *
 * <p>For air tires that give up to a quarter of their radius; measure the roll-out where it matters. Source: Brixius
 * 1987, ASAE paper 87-1622, as used in ASABE standards (read in secondary texts).
 */
public final class Rolling {
    private static final double MOST_SQUASH = 0.25;

    private Rolling() {}

    /** The rolling radius; outside the relation if the tire gives more than a quarter of its radius. */
    public static Judged<Length> radius(Length diameter, Length loadedRadius) {
        double free = diameter.meters() / 2;
        double loaded = loadedRadius.meters();
        Require.above("a diameter", 0, free);
        Require.above("a loaded radius", 0, loaded);
        if (!(loaded <= free)) {
            return Judged.outside("the loaded radius is larger than half the diameter: measure both again");
        }
        if (!(loaded >= (1 - MOST_SQUASH) * free)) {
            return Judged.outside("the tire gives more than a quarter of its radius: measure the roll-out");
        }
        return Judged.of(new Length(2.5 * loaded / (1.5 + loaded / free)));
    }

    /** New ground speed over the old one; pull changes the other way round. */
    public static double speedRatio(Length before, Length after) {
        Require.above("a radius", 0, before.meters());
        Require.above("a radius", 0, after.meters());
        return after.meters() / before.meters();
    }

    /** Radius of the circle a machine drifts on; infinite for like wheels, negative if it drifts to the left. */
    public static double driftRadius(Length track, Length left, Length right) {
        Require.above("a track", 0, track.meters());
        Require.above("a radius", 0, Math.min(left.meters(), right.meters()));
        double difference = left.meters() - right.meters();
        double mean = (left.meters() + right.meters()) / 2;
        return difference == 0 ? Double.POSITIVE_INFINITY : track.meters() * mean / difference;
    }
}
