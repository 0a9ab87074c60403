package footing.core.ground;

import footing.core.quantity.Length;
import footing.core.quantity.Mass;

/**
 * What each wheel carries on level ground, operator on, as four scales show it.
 *
 * <p>From them W = ΣN, center of gravity ahead of the drive axle x = L·(N_casters)/W and aside y = ΣN_i·y_i/W, left
 * positive. Source: statics; as derived in an open textbook on vehicle mechanics (read without a title kept).
 */
public record WheelLoads(Mass driveLeft, Mass driveRight, Mass casterLeft, Mass casterRight) {
    public WheelLoads {
        Require.above("a wheel load", 0, driveLeft.kilograms());
        Require.above("a wheel load", 0, driveRight.kilograms());
        Require.above("a wheel load", 0, casterLeft.kilograms());
        Require.above("a wheel load", 0, casterRight.kilograms());
    }

    /** Left and right alike, from a total and the share of it on the casters. */
    public static WheelLoads shared(Mass total, double casterShare) {
        if (!(casterShare > 0 && casterShare < 1)) {
            throw new IllegalArgumentException("the casters' share lies between 0 and 1, not " + casterShare);
        }
        Mass drive = new Mass(total.kilograms() * (1 - casterShare) / 2);
        Mass caster = new Mass(total.kilograms() * casterShare / 2);
        return new WheelLoads(drive, drive, caster, caster);
    }

    public Mass total() {
        return driveLeft.plus(driveRight).plus(casterLeft).plus(casterRight);
    }

    public Mass drives() {
        return driveLeft.plus(driveRight);
    }

    public Mass casters() {
        return casterLeft.plus(casterRight);
    }

    /** The heavier of a pair. */
    public Mass mostAtDrive() {
        return driveLeft.compareTo(driveRight) >= 0 ? driveLeft : driveRight;
    }

    public Mass mostAtCaster() {
        return casterLeft.compareTo(casterRight) >= 0 ? casterLeft : casterRight;
    }

    /** Where the weight acts ahead of the drive axle. */
    public Length ahead(Length wheelbase) {
        return new Length(wheelbase.meters() * casters().kilograms() / total().kilograms());
    }

    /** How far the weight acts left of the middle. */
    public Length aside(Frame frame) {
        double drive = frame.drive().meters() / 2 * (driveLeft.kilograms() - driveRight.kilograms());
        double caster = frame.caster().meters() / 2 * (casterLeft.kilograms() - casterRight.kilograms());
        return new Length((drive + caster) / total().kilograms());
    }

    /** With heavier or lighter wheels: their own mass stands on their own axle. */
    public WheelLoads plus(Mass eachDrive, Mass eachCaster) {
        return new WheelLoads(
                driveLeft.plus(eachDrive),
                driveRight.plus(eachDrive),
                casterLeft.plus(eachCaster),
                casterRight.plus(eachCaster));
    }
}
