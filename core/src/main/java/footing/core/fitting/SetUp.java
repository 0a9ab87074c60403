package footing.core.fitting;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.WheelPair;
import footing.core.ground.Change;
import footing.core.ground.Judged;
import footing.core.ground.MachineBody;
import footing.core.ground.PackageGround;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What other wheels change on a machine and what restores it. Each figure is there, or says what lacks.
 *
 * @param target height and rake to reach instead of the case's own; null takes the case's, which are also where the
 *     deck stands before
 */
public record SetUp(
        String machine,
        Measures measures,
        Change change,
        @Nullable Target target) {
    /** Where the blades should run: halfway between the tips, and how much lower the front tip is. */
    public record Target(Length height, Length rake) {}

    /** The height to reach: of the target, else as the case has it; null if nobody said. */
    public @Nullable Length height() {
        return target != null ? target.height() : stated(Measure.DECK_HEIGHT);
    }

    /** The rake to reach; null if nobody said. */
    public @Nullable Length rake() {
        return target != null ? target.rake() : stated(Measure.DECK_RAKE);
    }

    private @Nullable Length stated(Measure measure) {
        OptionalDouble x = measures.get(measure);
        return x.isPresent() ? new Length(x.getAsDouble()) : null;
    }

    public static SetUp of(Case stated, String machine, Case.WheelPackage wanted, @Nullable Target target) {
        Case.Machine m = stated.machine(machine);
        Change change = new Change(WheelPair.of(stated, m.carries()), WheelPair.of(stated, wanted));
        return new SetUp(machine, m.measures(), change, target);
    }

    public Judged<Change.Rise> rise(Position position) {
        return change.rise(position);
    }

    private Judged<DeckPlane> plane() {
        if (!measures.has(Measure.WHEELBASE)) {
            return Judged.lacks(path(Measure.WHEELBASE));
        }
        return rise(Position.DRIVE)
                .then(r -> rise(Position.CASTER)
                        .map(f -> new DeckPlane(value(Measure.WHEELBASE), r.by().meters(), f.by().meters())));
    }

    /** Change of the frame's pitch; positive lifts the casters' end. */
    public Judged<Angle> pitch() {
        return plane().map(p -> new Angle(p.pitch()));
    }

    /**
     * What happens to the deck if its hangers are left alone.
     *
     * @param rearTip rise of the rear blade tip
     * @param frontTip rise of the front blade tip
     * @param middle rise halfway: how far the height lever's marks are off now
     * @param rake change of rake; below zero the front loses its advantage
     */
    public record Untouched(Length rearTip, Length frontTip, Length middle, Length rake) {}

    public Judged<Untouched> untouched() {
        return tips().then(t -> plane().map(p -> new Untouched(
                new Length(p.rise(t.rear())),
                new Length(p.rise(t.front())),
                new Length(p.rise((t.rear() + t.front()) / 2)),
                new Length(p.rakeChange(t.front() - t.rear())))));
    }

    /** Blade tips ahead of the drive axle. */
    private record Tips(double rear, double front) {}

    private Judged<Tips> tips() {
        List<String> lacking = lacking(Measure.TIP_REAR, Measure.TIP_FRONT);
        return lacking.isEmpty()
                ? Judged.of(new Tips(value(Measure.TIP_REAR), value(Measure.TIP_FRONT)))
                : new Judged.Lacks<>(lacking);
    }

    /** Of the rear and the front hangers: turns, or what they lower the deck by; below zero they raise it. */
    public record Hangers(double rear, double front) {}

    /** The turns that bring the deck to the target, or back to where it was. */
    public Judged<Hangers> turns() {
        return lowering().map(e -> new Hangers(hanger().turns(e.rear()), hanger().turns(e.front())));
    }

    /** What the hangers have to lower the deck by, in meters. */
    Judged<Hangers> lowering() {
        List<String> lacking = lacking(Measure.HANGER_REAR, Measure.HANGER_FRONT, Measure.THREAD_PITCH);
        if (target != null) {
            lacking.addAll(lacking(Measure.DECK_HEIGHT, Measure.DECK_RAKE));
        }
        if (!lacking.isEmpty()) {
            return new Judged.Lacks<>(lacking);
        }
        return tips().then(t -> plane().map(p -> new Hangers(
                p.lowering(value(Measure.HANGER_REAR), before(t), wanted(t)),
                p.lowering(value(Measure.HANGER_FRONT), before(t), wanted(t)))));
    }

    /** Thread and ratio, where the thread is known. */
    DeckPlane.Hanger hanger() {
        return new DeckPlane.Hanger(
                value(Measure.THREAD_PITCH), measures.get(Measure.HANGER_RATIO).orElse(1));
    }

    private DeckPlane.Plane before(Tips t) {
        return new DeckPlane.Plane(t.rear(), t.front(), height(0), rake(0));
    }

    private DeckPlane.Plane wanted(Tips t) {
        return target == null
                ? before(t)
                : new DeckPlane.Plane(
                        t.rear(),
                        t.front(),
                        target.height().meters(),
                        target.rake().meters());
    }

    /** Where the blades run: the tips ahead of the drive axle, and their heights above the ground. */
    public record Blades(Length rearAhead, Length frontAhead, Length rearHeight, Length frontHeight) {
        private static Blades of(DeckPlane.Plane p) {
            return new Blades(
                    new Length(p.rearTip()),
                    new Length(p.frontTip()),
                    new Length(p.at(p.rearTip())),
                    new Length(p.at(p.frontTip())));
        }
    }

    /** The blades before, after with the hangers left alone, and as they should be. */
    public record BladeLines(Blades before, Blades after, Blades wanted) {}

    public Judged<BladeLines> blades() {
        List<String> lacking = lacking(Measure.DECK_HEIGHT, Measure.DECK_RAKE);
        if (!lacking.isEmpty()) {
            return new Judged.Lacks<>(lacking);
        }
        return tips().then(t -> plane().map(p ->
                new BladeLines(Blades.of(before(t)), Blades.of(p.moved(before(t))), Blades.of(wanted(t)))));
    }

    /** Only differences count where the deck's own height is not known. */
    private double height(double otherwise) {
        return measures.get(Measure.DECK_HEIGHT).orElse(otherwise);
    }

    private double rake(double otherwise) {
        return measures.get(Measure.DECK_RAKE).orElse(otherwise);
    }

    /** The deck before and after the change, hangers untouched. */
    public record Deck(Length heightBefore, Length heightAfter, Length rakeBefore, Length rakeAfter) {}

    public Judged<Deck> deck() {
        List<String> lacking = lacking(Measure.DECK_HEIGHT, Measure.DECK_RAKE);
        if (!lacking.isEmpty()) {
            return new Judged.Lacks<>(lacking);
        }
        Length height = new Length(height(0));
        Length rake = new Length(rake(0));
        return untouched().map(u -> new Deck(height, height.plus(u.middle()), rake, rake.plus(u.rake())));
    }

    public Judged<Change.Speed> speed() {
        return change.speed();
    }

    public Judged<Length> track() {
        return change.track(Position.DRIVE);
    }

    /** Width over the drive tires, before and after. */
    public record Width(Length before, Length after) {}

    public Judged<Width> width() {
        if (!measures.has(Measure.TRACK_DRIVE)) {
            return Judged.lacks(path(Measure.TRACK_DRIVE));
        }
        OptionalDouble was = change.before().drive().get(Measure.WIDTH);
        OptionalDouble is = change.after().drive().get(Measure.WIDTH);
        if (was.isEmpty() || is.isEmpty()) {
            String id =
                    (is.isEmpty() ? change.after() : change.before()).drive().id();
            return Judged.lacks("assemblies." + id + "." + Measure.WIDTH.key());
        }
        double track = value(Measure.TRACK_DRIVE);
        return track().map(t ->
                new Width(new Length(track + was.getAsDouble()), new Length(track + t.meters() + is.getAsDouble())));
    }

    /** How much heavier each wheel of a pair is. */
    public Judged<Mass> mass(Position position) {
        return change.mass(position);
    }

    /** The static sideways tip angle before and after. No permission to mow a slope. */
    public record Tipping(Angle before, Angle after) {}

    public Judged<Tipping> tip() {
        MachineBody body = new MachineBody(machine, measures, change.before().drive());
        PackageGround was = new PackageGround(body, change.before(), change.before());
        PackageGround is = new PackageGround(body, change);
        return was.tip().then(b -> is.tip().map(a -> new Tipping(b, a)));
    }

    private List<String> lacking(Measure... wanted) {
        List<String> lacking = new ArrayList<>();
        for (Measure m : wanted) {
            if (!measures.has(m)) {
                lacking.add(path(m));
            }
        }
        return lacking;
    }

    private String path(Measure measure) {
        return "machines." + machine + "." + measure.key();
    }

    private double value(Measure measure) {
        return measures.get(measure).orElseThrow();
    }
}
