package footing.core.ground;

import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;

/**
 * The height of the center of gravity by lifting the casters' axle and weighing again:
 * h = r + (x − L·R/W)·cot θ with sin θ = H/L.
 *
 * <p>Tires must not give more, fuel and operator must stay, brakes off, axles level at the start. Under 10 degrees it says so:
 * a kilogram more or less on the scale would move h by a centimeter and more. Source: an open textbook on vehicle
 * mechanics (derivation read); ISO 789-6 (from memory).
 *
 * @param total of all wheels on level ground
 * @param ahead center of gravity ahead of the drive axle, level
 * @param lifted what the lifted axle shows
 */
public record LiftedAxle(Mass total, Length ahead, Length wheelbase, Length lift, Mass lifted) {
    private static final double LEAST_DEGREES = 10;

    public LiftedAxle {
        Require.above("the mass", 0, total.kilograms());
        Require.above("the wheelbase", 0, wheelbase.meters());
        Require.above("the lift", 0, lift.meters());
        Require.above("what the lifted axle shows", 0, lifted.kilograms());
        if (!(lift.meters() < wheelbase.meters())) {
            throw new IllegalArgumentException("an axle can't be lifted as high as the wheelbase is long");
        }
    }

    public Angle angle() {
        return new Angle(Math.asin(lift.meters() / wheelbase.meters()));
    }

    /** Height above the ground, from the loaded radius of the wheels left on the floor. */
    public Judged<Length> height(Length loadedRadius) {
        if (!(angle().degrees() >= LEAST_DEGREES)) {
            return Judged.outside("lifted by less than 10 degrees: lift higher, a scale is not fine enough for this");
        }
        double shifted = wheelbase.meters() * lifted.kilograms() / total.kilograms();
        double height = loadedRadius.meters() + (ahead.meters() - shifted) / Math.tan(angle().radians());
        return height > 0
                ? Judged.of(new Length(height))
                : Judged.outside("the lifted axle shows more than it can: weigh again");
    }

    /** How far the height moves for a kilogram on the lifted axle's scale, in m/kg. */
    public double sensitivity() {
        return wheelbase.meters() / Math.tan(angle().radians()) / total.kilograms();
    }
}
