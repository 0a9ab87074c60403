package footing.core.ground;

/**
 * How far the ground under a patch is dragged in a turn, and how much energy that puts into it: the turn decides, not
 * the tire.
 *
 * <ul>
 *   <li>Locked inside wheel: the patch spins about its own middle, mean path r̄·θ, energy per area μ·p·r̄·θ. Rectangle
 *       with half-sides a, c and q = √(a² + c²): r̄ = q/3 + (a²/6c)·ln((c + q)/a) + (c²/6a)·ln((a + q)/c).
 *   <li>Rolling inside wheel on a path of radius R: mean path w·l/(4R). Counter-rotating wheels roll on R = t/2.
 * </ul>
 *
 * Meters, pascals, radians. Compare wheels and turns by it; it promises no turf. Source: derived.
 */
public final class PivotScrub {
    private PivotScrub() {}

    /** r̄ of a rectangular patch. */
    public static double meanRadius(double length, double width) {
        Require.above("a length", 0, length);
        Require.above("a width", 0, width);
        double a = length / 2;
        double c = width / 2;
        double q = Math.hypot(a, c);
        return q / 3 + a * a / (6 * c) * Math.log((c + q) / a) + c * c / (6 * a) * Math.log((a + q) / c);
    }

    /** Mean slip path under a locked wheel. */
    public static double lockedPath(double length, double width, double turn) {
        Require.above("a turn", 0, turn);
        return meanRadius(length, width) * turn;
    }

    /** Mean slip path under a wheel that rolls on a path of this radius. */
    public static double rollingPath(double length, double width, double radius) {
        Require.above("a radius", 0, radius);
        return width * length / (4 * radius);
    }

    /** Energy per area in J/m², from friction, mean pressure and mean slip path. */
    public static double energy(double friction, double pressure, double path) {
        Require.within("a friction coefficient", 0, 2, friction);
        return friction * pressure * path;
    }

    /** How many times as far a locked inside wheel drags the ground as counter-rotating wheels do in the same turn. */
    public static double lockedAgainstCounter(double length, double width, double track, double turn) {
        Require.above("a track", 0, track);
        return lockedPath(length, width, turn) / rollingPath(length, width, track / 2);
    }
}
