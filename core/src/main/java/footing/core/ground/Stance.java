package footing.core.ground;

import footing.core.quantity.Mass;

/**
 * A machine as a rigid body on four contacts: what slope figures are worked out from.
 *
 * <p>The center of gravity must lie inside the contacts, or the machine would tip over on level ground.
 */
public record Stance(Mass mass, Frame frame, CenterOfGravity center) {
    public Stance {
        Require.above("the mass", 0, mass.kilograms());
        double wheelbase = frame.wheelbase().meters();
        double ahead = center.ahead().meters();
        if (!(ahead > 0 && ahead < wheelbase)) {
            throw new IllegalArgumentException(
                    "the center of gravity must lie between the axles, not " + ahead + " m ahead of the drive axle");
        }
        double half = halfWidth(frame, ahead);
        if (!(Math.abs(center.aside().meters()) < half)) {
            throw new IllegalArgumentException("the center of gravity must lie between left and right wheels");
        }
    }

    /** Half the width of the contacts at a distance ahead of the drive axle. */
    private static double halfWidth(Frame frame, double ahead) {
        double drive = frame.drive().meters();
        double caster = frame.caster().meters();
        return (drive + (caster - drive) * ahead / frame.wheelbase().meters()) / 2;
    }

    double halfWidthAtCenter() {
        return halfWidth(frame, ahead());
    }

    double weight() {
        return mass.newtons();
    }

    double wheelbase() {
        return frame.wheelbase().meters();
    }

    double track() {
        return frame.drive().meters();
    }

    double ahead() {
        return center.ahead().meters();
    }

    /** Toward whichever side is lower: the worse one is meant. */
    double aside() {
        return Math.abs(center.aside().meters());
    }

    double height() {
        return center.height().meters();
    }
}
