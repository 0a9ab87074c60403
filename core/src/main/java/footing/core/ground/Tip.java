package footing.core.ground;

import footing.core.quantity.Angle;
import footing.core.quantity.Length;

/**
 * The slope at which a machine that stands still, on firm ground, without bumps, would begin to tip. A static figure is
 * no permission to mow a slope: holes, stumps, turns, speed, catchers and wet ground tip a machine far earlier.
 *
 * <p>Source: derived (moment balance about the edge between two contacts).
 */
public final class Tip {
    private static final int HALVINGS = 60;

    private Tip() {}

    /** Over the edge through both downhill contacts: tan θ = distance from center of gravity to the edge / height. */
    public static Angle sideways(Stance s) {
        double slant = (s.frame().caster().meters() - s.track()) / 2 / s.wheelbase();
        double distance = (s.halfWidthAtCenter() - s.aside()) / Math.hypot(1, slant);
        return Angle.ofSlope(distance / s.height());
    }

    /**
     * Over the line from a drive wheel to a front axle that swings on a center pivot: tan θ = (t/2)(1 − x/L) / (h − p·x/L)
     * with the pivot at height p. A pivot on the ground is the bare triangle, the least there can be.
     */
    public static Angle sidewaysPivoted(Stance s, Length pivot) {
        double part = s.ahead() / s.wheelbase();
        double arm = s.height() - pivot.meters() * part;
        Require.within("the height of the pivot", 0, Double.MAX_VALUE, pivot.meters());
        Require.above("the center of gravity over the line of the pivot", 0, arm);
        return Angle.ofSlope((s.track() / 2 * (1 - part) - s.aside()) / arm);
    }

    /** Up a slope, over the drive axle: tan θ = x/h. */
    public static Angle backward(Stance s) {
        return Angle.ofSlope(s.ahead() / s.height());
    }

    /** Down a slope, over the casters: tan θ = (L − x)/h. */
    public static Angle forward(Stance s) {
        return Angle.ofSlope((s.wheelbase() - s.ahead()) / s.height());
    }

    /**
     * As {@link #sideways} with downhill tires that give: the machine rolls by φ = W·cos θ/(k·t), which brings the
     * center of gravity h·φ nearer to the edge.
     *
     * @param stiffness of the downhill tires together, N/m
     */
    public static Angle sidewaysOnSoftTires(Stance s, double stiffness) {
        Require.above("a stiffness", 0, stiffness);
        double low = 0;
        double high = sideways(s).radians();
        double reach = Math.tan(high) * s.height();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double roll = s.weight() * Math.cos(middle) / (stiffness * s.track());
            boolean stands = Math.tan(middle) * s.height() < reach - s.height() * roll;
            low = stands ? middle : low;
            high = stands ? high : middle;
        }
        return new Angle(low);
    }
}
