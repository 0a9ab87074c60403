package footing.core.ground;

import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/**
 * A machine as it stands on what it carries now: wheel loads, wheels' places, center of gravity, as far as they were
 * measured. Paths of what lacks are given as in the case file.
 *
 * @param id of the machine
 * @param drive the drive wheels it carries now
 */
public record MachineBody(String id, Measures measures, WheelFacts drive) {
    /** An operator nobody weighed: common practice, no source. */
    public static final Mass USUAL_OPERATOR = new Mass(90);

    private static final List<Measure> LOADS =
            List.of(Measure.DRIVE_LEFT, Measure.DRIVE_RIGHT, Measure.CASTER_LEFT, Measure.CASTER_RIGHT);

    /** With the operator on: as weighed, or shared out from the mass. */
    public Judged<WheelLoads> loads() {
        if (LOADS.stream().allMatch(measures::has)) {
            return Judged.of(new WheelLoads(
                    mass(Measure.DRIVE_LEFT),
                    mass(Measure.DRIVE_RIGHT),
                    mass(Measure.CASTER_LEFT),
                    mass(Measure.CASTER_RIGHT)));
        }
        if (!(measures.has(Measure.MACHINE_MASS) && measures.has(Measure.FRONT_SHARE))) {
            return Judged.lacks(path("wheelLoads"));
        }
        Mass operator = measures.has(Measure.OPERATOR_MASS) ? mass(Measure.OPERATOR_MASS) : USUAL_OPERATOR;
        return Judged.of(WheelLoads.shared(mass(Measure.MACHINE_MASS).plus(operator), value(Measure.FRONT_SHARE)));
    }

    public Judged<Frame> frame() {
        List<String> lacking = lacking(Measure.WHEELBASE, Measure.TRACK_DRIVE, Measure.TRACK_CASTER);
        return lacking.isEmpty()
                ? Judged.of(
                        new Frame(length(Measure.WHEELBASE), length(Measure.TRACK_DRIVE), length(Measure.TRACK_CASTER)))
                : new Judged.Lacks<>(lacking);
    }

    /** The height as stated, or from weighing with the casters lifted. */
    public Judged<CenterOfGravity> center() {
        return frame().then(f -> loads().then(l -> height(l, f).map(h -> {
            Length ahead = measures.has(Measure.CENTER_AHEAD) ? length(Measure.CENTER_AHEAD) : l.ahead(f.wheelbase());
            return new CenterOfGravity(ahead, l.aside(f), h);
        })));
    }

    private Judged<Length> height(WheelLoads loads, Frame frame) {
        if (measures.has(Measure.CENTER_HEIGHT)) {
            return Judged.of(length(Measure.CENTER_HEIGHT));
        }
        if (!(measures.has(Measure.LIFT_HEIGHT) && measures.has(Measure.LIFT_CASTERS))) {
            return Judged.lacks(path(Measure.CENTER_HEIGHT.key()));
        }
        if (!drive.has(Measure.LOADED_RADIUS)) {
            return Judged.lacks("assemblies." + drive.id() + "." + Measure.LOADED_RADIUS.key());
        }
        LiftedAxle lifted = new LiftedAxle(
                loads.total(),
                loads.ahead(frame.wheelbase()),
                frame.wheelbase(),
                length(Measure.LIFT_HEIGHT),
                mass(Measure.LIFT_CASTERS));
        return lifted.height(new Length(drive.get(Measure.LOADED_RADIUS).orElseThrow()));
    }

    /** The machine with other wheels on it. */
    public Judged<Stance> stance(Change change) {
        return frame().then(f -> center().then(c -> loads().then(l -> changed(change, f, c, l))));
    }

    /** The height stays that of the body: heavier wheels would only lower it. */
    private static Judged<Stance> changed(Change change, Frame f, CenterOfGravity c, WheelLoads l) {
        Mass none = new Mass(0);
        double drive = change.mass(Position.DRIVE).value().orElse(none).kilograms();
        double caster = change.mass(Position.CASTER).value().orElse(none).kilograms();
        double was = l.total().kilograms();
        double wheelbase = f.wheelbase().meters();
        double is = was + 2 * drive + 2 * caster;
        double ahead = (was * c.ahead().meters() + 2 * caster * wheelbase) / is;
        return change.rise(Position.DRIVE)
                .then(dr -> change.rise(Position.CASTER)
                        .then(df -> change.track(Position.DRIVE).map(t -> {
                            double part = c.ahead().meters() / wheelbase;
                            double rise =
                                    dr.by().meters() * (1 - part) + df.by().meters() * part;
                            return new Stance(
                                    new Mass(is),
                                    new Frame(f.wheelbase(), f.drive().plus(t), f.caster()),
                                    new CenterOfGravity(
                                            new Length(ahead),
                                            c.aside(),
                                            c.height().plus(new Length(rise))));
                        })));
    }

    private List<String> lacking(Measure... wanted) {
        List<String> lacking = new ArrayList<>();
        for (Measure m : wanted) {
            if (!measures.has(m)) {
                lacking.add(path(m.key()));
            }
        }
        return lacking;
    }

    private String path(String key) {
        return "machines." + id + "." + key;
    }

    private double value(Measure measure) {
        return measures.get(measure).orElseThrow();
    }

    private Mass mass(Measure measure) {
        return new Mass(value(measure));
    }

    private Length length(Measure measure) {
        return new Length(value(measure));
    }
}
