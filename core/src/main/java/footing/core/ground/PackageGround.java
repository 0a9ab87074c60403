package footing.core.ground;

import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What one wheel package does to the ground and to the machine on it. Each figure is there, or says why it is not. */
public record PackageGround(MachineBody machine, Change change) {
    /** The depth at which what is left of the pressure is told: topsoil. */
    public static final Length DEPTH = new Length(0.1);

    /** How much less one drive may roll on than the other: what a few psi or worn tread come to. Common practice, no source. */
    public static final Length UNLIKE = Length.ofInches(1.0 / 8);

    private static final double QUARTER_TURN = Math.PI / 2;

    public PackageGround(MachineBody machine, WheelPair carried, WheelPair other) {
        this(machine, new Change(carried, other));
    }

    public WheelPair wheels() {
        return change.after();
    }

    /** Wheel loads with these wheels; those carried now if their masses are not known. */
    public Judged<WheelLoads> loads() {
        return machine.loads().map(l -> {
            Mass none = new Mass(0);
            Mass drive = change.mass(Position.DRIVE).value().orElse(none);
            Mass caster = change.mass(Position.CASTER).value().orElse(none);
            return l.plus(drive, caster);
        });
    }

    /** The print of the heavier loaded wheel of the pair. */
    public Judged<Patch> patch(Position position) {
        WheelFacts wheel = wheels().at(position);
        return loads().then(l -> named(
                wheel, TirePatch.of(tire(wheel), position == Position.DRIVE ? l.mostAtDrive() : l.mostAtCaster())));
    }

    /** Says whose measure lacks. */
    private static Judged<Patch> named(WheelFacts wheel, Judged<Patch> judged) {
        return judged instanceof Judged.Lacks<Patch> l
                ? new Judged.Lacks<>(l.needed().stream()
                        .map(k -> "assemblies." + wheel.id() + "." + k)
                        .toList())
                : judged;
    }

    private static TirePatch.Tire tire(WheelFacts wheel) {
        return new TirePatch.Tire(
                wheel.kind(),
                length(wheel, Measure.DIAMETER),
                length(wheel, Measure.WIDTH),
                pressure(wheel, Measure.PRESSURE),
                print(wheel));
    }

    private static @Nullable Print print(WheelFacts wheel) {
        Length length = length(wheel, Measure.PRINT_LENGTH);
        Length width = length(wheel, Measure.PRINT_WIDTH);
        OptionalDouble load = wheel.get(Measure.PRINT_LOAD);
        if (length == null || width == null || load.isEmpty()) {
            return null;
        }
        double shape = wheel.get(Measure.PRINT_SHAPE).orElse(Print.USUAL_SHAPE);
        return new Print(length, width, shape, new Mass(load.getAsDouble()), pressure(wheel, Measure.PRINT_PRESSURE));
    }

    /** What of the drives' pressure is left at {@link #DEPTH}, on a moist lawn. */
    public Judged<Pressure> below() {
        return patch(Position.DRIVE)
                .map(p -> new Pressure(DepthStress.below(
                        p.mean().pascals(), p.area().squareMeters(), DEPTH.meters(), DepthStress.MOIST)));
    }

    /** One point of a curve. */
    public record Point(Pressure inflation, Pressure ground) {}

    /** Ground pressure of the drives against inflation, 8 to 20 psi, where the relation holds. */
    public List<Point> curve() {
        List<Point> points = new ArrayList<>();
        WheelFacts wheel = wheels().drive();
        if (!wheel.kind().holdsAir()) {
            return points;
        }
        TirePatch.Tire tire = tire(wheel);
        for (int psi = 8; psi <= 20; psi++) {
            Pressure inflation = Pressure.ofPsi(psi);
            var at = new TirePatch.Tire(tire.kind(), tire.diameter(), tire.width(), inflation, tire.print());
            loads().then(l -> TirePatch.of(at, l.mostAtDrive()))
                    .value()
                    .ifPresent(p -> points.add(new Point(inflation, p.mean())));
        }
        return points;
    }

    public Judged<Stance> stance() {
        return machine.stance(change);
    }

    /** Slide across with free casters, at this friction. */
    public Judged<Angle> hold(double friction) {
        return stance().map(s -> SlopeHold.across(s, friction));
    }

    /** Slide straight up, at this friction. */
    public Judged<Angle> climb(double friction) {
        return stance().map(s -> SlopeHold.climb(s, friction));
    }

    /** Over the downhill tires, their softness included where it is known. */
    public Judged<Angle> tip() {
        OptionalDouble drive = wheels().drive().get(Measure.STIFFNESS);
        OptionalDouble caster = wheels().caster().get(Measure.STIFFNESS);
        return stance().map(s -> drive.isPresent() && caster.isPresent()
                ? Tip.sidewaysOnSoftTires(s, drive.getAsDouble() + caster.getAsDouble())
                : Tip.sideways(s));
    }

    /** Sideways if the casters' axle swings on a pivot: the least there can be. */
    public Judged<Angle> tipIfPivoted() {
        return stance().map(s -> Tip.sidewaysPivoted(s, new Length(0)));
    }

    /**
     * The ground dragged in a quarter turn, the mean path under a drive wheel.
     *
     * @param locked on the spot about a locked wheel
     * @param counter about the middle of the machine, the wheels turning against each other
     */
    public record Scrub(Length locked, Length counter) {}

    public Judged<Scrub> scrub() {
        return patch(Position.DRIVE).then(p -> {
            Length length = p.length();
            Length width = p.width();
            if (length == null || width == null) {
                return Judged.lacks("assemblies." + wheels().drive().id() + "." + Measure.WIDTH.key());
            }
            return machine.frame()
                    .map(f -> new Scrub(
                            new Length(PivotScrub.lockedPath(length.meters(), width.meters(), QUARTER_TURN)),
                            new Length(PivotScrub.rollingPath(
                                    length.meters(), width.meters(), f.drive().meters() / 2))));
        });
    }

    /** Radius of the circle it drifts on, toward the smaller drive, where one rolls {@link #UNLIKE} smaller. */
    public Judged<Length> drift() {
        return machine.frame()
                .then(f -> change.track(Position.DRIVE)
                        .then(wider -> change.rolling()
                                .map(r ->
                                        new Length(Rolling.driftRadius(f.drive().plus(wider), r, r.minus(UNLIKE))))));
    }

    private static @Nullable Length length(WheelFacts wheel, Measure measure) {
        OptionalDouble x = wheel.get(measure);
        return x.isPresent() ? new Length(x.getAsDouble()) : null;
    }

    private static @Nullable Pressure pressure(WheelFacts wheel, Measure measure) {
        OptionalDouble x = wheel.get(measure);
        return x.isPresent() ? new Pressure(x.getAsDouble()) : null;
    }
}
