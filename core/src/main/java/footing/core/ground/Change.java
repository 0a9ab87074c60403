package footing.core.ground;

import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What other wheels change on the machine: how far each axle rises, how far apart the tires stand, how heavy the wheels
 * are, how fast it goes. From the wheels carried now to others.
 */
public record Change(WheelPair before, WheelPair after) {
    private static final double TWICE = 2;

    /**
     * A rise of an axle.
     *
     * @param fromSizes true if it only says how the diameters differ: how far each tire gives under load is left out
     */
    public record Rise(Length by, boolean fromSizes) {}

    /** The change in loaded radius; in half the diameter where a loaded radius lacks. */
    public Judged<Rise> rise(Position position) {
        WheelFacts was = before.at(position);
        WheelFacts is = after.at(position);
        if (isSameTire(was, is)) {
            return Judged.of(new Rise(new Length(0), false));
        }
        if (was.has(Measure.LOADED_RADIUS) && is.has(Measure.LOADED_RADIUS)) {
            return Judged.of(
                    new Rise(new Length(value(is, Measure.LOADED_RADIUS) - value(was, Measure.LOADED_RADIUS)), false));
        }
        if (was.has(Measure.DIAMETER) && is.has(Measure.DIAMETER)) {
            double by = (value(is, Measure.DIAMETER) - value(was, Measure.DIAMETER)) / 2;
            return Judged.of(new Rise(new Length(by), true));
        }
        WheelFacts lacking = is.has(Measure.DIAMETER) ? was : is;
        return Judged.lacks(key(lacking, Measure.LOADED_RADIUS));
    }

    /** The same set, or one that only got sealant. */
    private static boolean isSameTire(WheelFacts was, WheelFacts is) {
        return was.id().equals(is.id())
                || (was.isSameWheel(is) && was.kind().holdsAir() && is.kind().holdsAir());
    }

    /** How much wider the track gets: twice the change in offset. */
    public Judged<Length> track(Position position) {
        WheelFacts was = before.at(position);
        WheelFacts is = after.at(position);
        if (position == Position.CASTER || was.isSameWheel(is)) {
            return Judged.of(new Length(0));
        }
        if (was.has(Measure.OFFSET) && is.has(Measure.OFFSET)) {
            return Judged.of(new Length(TWICE * (value(is, Measure.OFFSET) - value(was, Measure.OFFSET))));
        }
        return Judged.lacks(key(is.has(Measure.OFFSET) ? was : is, Measure.OFFSET));
    }

    /** How much heavier each wheel is. */
    public Judged<Mass> mass(Position position) {
        WheelFacts was = before.at(position);
        WheelFacts is = after.at(position);
        if (was.id().equals(is.id())) {
            return Judged.of(new Mass(0));
        }
        if (was.has(Measure.MASS) && is.has(Measure.MASS)) {
            return Judged.of(new Mass(value(is, Measure.MASS) - value(was, Measure.MASS)));
        }
        return Judged.lacks(key(is.has(Measure.MASS) ? was : is, Measure.MASS));
    }

    /**
     * New ground speed over the old one.
     *
     * @param fromSizes true if it is the ratio of the diameters
     */
    public record Speed(double ratio, boolean fromSizes) {}

    /** From the rolling radii of the drives; from their diameters where a loaded radius lacks. */
    public Judged<Speed> speed() {
        WheelFacts was = before.drive();
        WheelFacts is = after.drive();
        if (isSameTire(was, is)) {
            return Judged.of(new Speed(1, false));
        }
        if (!(was.has(Measure.DIAMETER) && is.has(Measure.DIAMETER))) {
            return Judged.lacks(key(is.has(Measure.DIAMETER) ? was : is, Measure.DIAMETER));
        }
        if (was.has(Measure.LOADED_RADIUS) && is.has(Measure.LOADED_RADIUS)) {
            return rolling(was).then(r0 -> rolling(is).map(r1 -> new Speed(Rolling.speedRatio(r0, r1), false)));
        }
        return Judged.of(new Speed(value(is, Measure.DIAMETER) / value(was, Measure.DIAMETER), true));
    }

    /** Rolling radius of the new drives. */
    Judged<Length> rolling() {
        WheelFacts drive = after.drive();
        for (Measure m : List.of(Measure.DIAMETER, Measure.LOADED_RADIUS)) {
            if (!drive.has(m)) {
                return Judged.lacks(key(drive, m));
            }
        }
        return rolling(drive);
    }

    private static Judged<Length> rolling(WheelFacts wheel) {
        return Rolling.radius(
                new Length(value(wheel, Measure.DIAMETER)), new Length(value(wheel, Measure.LOADED_RADIUS)));
    }

    /** New vertical stiffness of the drives over the old one: how much harder they pass on a bump. */
    public Judged<Double> stiffness() {
        OptionalDouble was = before.drive().get(Measure.STIFFNESS);
        OptionalDouble is = after.drive().get(Measure.STIFFNESS);
        if (before.drive().id().equals(after.drive().id())) {
            return Judged.of(1.0);
        }
        if (was.isEmpty() || is.isEmpty()) {
            return Judged.lacks(key(is.isPresent() ? before.drive() : after.drive(), Measure.STIFFNESS));
        }
        return Judged.of(is.getAsDouble() / was.getAsDouble());
    }

    private static double value(WheelFacts wheel, Measure measure) {
        return wheel.get(measure).orElseThrow();
    }

    private static String key(WheelFacts wheel, Measure measure) {
        return "assemblies." + wheel.id() + "." + measure.key();
    }
}
