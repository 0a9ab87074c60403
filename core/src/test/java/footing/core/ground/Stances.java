package footing.core.ground;

import footing.core.money.ReferenceValue;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;

/** Machines for tests. */
final class Stances {
    private static final double GRAVITY = 9.80665;

    private Stances() {}

    /** Weight in N, ahead, wheelbase, drive track, height, caster track; m. */
    static Stance of(double... x) {
        return new Stance(
                new Mass(x[0] / GRAVITY),
                new Frame(new Length(x[2]), new Length(x[3]), new Length(x[5])),
                new CenterOfGravity(new Length(x[1]), new Length(0), new Length(x[4])));
    }

    static Stance of(ReferenceValue row) {
        return of(row.from(0));
    }

    /** The stance of the reference values, at another height and track. */
    static Stance at(double height, double track) {
        return of(6000, 0.4, 1.25, track, height, track);
    }
}
