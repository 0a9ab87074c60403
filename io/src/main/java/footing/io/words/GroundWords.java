package footing.io.words;

import footing.core.fleet.Position;
import footing.core.ground.Change;
import footing.core.ground.MachineGround;
import footing.core.ground.Marking;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.ground.SlopeLoads;
import footing.core.ground.Wetness;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is said of a machine on the ground.
 *
 * @param si how quantities are shown
 */
public record GroundWords(boolean si) {
    /** How a package marks against the carried one. */
    public static String marking(Marking marking) {
        return switch (marking) {
            case LESS -> "less";
            case ALIKE -> "alike";
            case MORE -> "more";
        };
    }

    public static String wetness(Wetness wetness) {
        return switch (wetness) {
            case DRY -> "dry";
            case DAMP -> "damp";
            case WET -> "wet";
        };
    }

    /** What a patch rests on. */
    public static String basis(Patch.Basis basis) {
        return switch (basis) {
            case PRINT -> "its print";
            case CARRIED_OVER -> "its print, carried over to this load";
            case PRIOR -> "no print: usual, not measured";
        };
    }

    /** A ground pressure; with its range where it rests on no print. */
    public String pressure(Patch patch) {
        Quantities q = new Quantities(si);
        if (patch.basis() != Patch.Basis.PRIOR) {
            return q.pressure(patch.mean());
        }
        String low = q.pressure(patch.low());
        return low.substring(0, low.indexOf(' ')) + " to " + q.pressure(patch.high());
    }

    /** Drives against casters, in words: which end marks more. */
    public Optional<String> ends(PackageGround p) {
        Optional<Patch> drive = p.patch(Position.DRIVE).value();
        Optional<Patch> caster = p.patch(Position.CASTER).value();
        if (drive.isEmpty() || caster.isEmpty()) {
            return Optional.empty();
        }
        double ratio = caster.get().mean().pascals() / drive.get().mean().pascals();
        String times = Figures.decimals(Math.max(ratio, 1 / ratio), 1);
        return Optional.of(
                Marking.of(drive.get().mean(), caster.get().mean(), Wetness.WET) == Marking.ALIKE
                        ? "casters and drives press alike"
                        : ratio > 1
                                ? "casters press " + times + " times as hard as drives"
                                : "drives press " + times + " times as hard as casters");
    }

    /** Beside every ranking. */
    public static String promiseNothing() {
        return "A ranking, not a promise: how sharply it turns, how often it passes and how wet the ground is decide"
                + " more than the tire.";
    }

    /** What a turn does, for one package. */
    public Optional<String> turn(PackageGround p) {
        Quantities q = new Quantities(si);
        return p.scrub()
                .value()
                .map(s -> "A quarter turn about a locked wheel drags the ground " + q.length(s.locked())
                        + " under it; with the wheels turning against each other "
                        + q.length(s.counter()) + ". The turn decides, not the tire.");
    }

    /** What unlike drives do, for one package. */
    public Optional<String> drift(PackageGround p) {
        Quantities q = new Quantities(si);
        return p.drift()
                .value()
                .map(r ->
                        "If one drive rolls " + q.length(PackageGround.UNLIKE) + " smaller than the other, the machine"
                                + " drifts toward it on a circle " + q.distance(new Length(2 * r.meters()))
                                + " across, and its deck hangs lower on that side: keep left and right alike in make, wear and"
                                + " pressure.");
    }

    /**
     * What a package changes on the ground, in a line beside its money; empty if nothing of it is known or nothing
     * changes. Slope figures carry {@link SlopeCaution} where this is shown.
     */
    public Optional<String> line(PackageGround carried, PackageGround other) {
        List<String> parts = new ArrayList<>();
        pressures(carried, other).ifPresent(parts::add);
        holds(carried, other).ifPresent(parts::add);
        heights(other.change()).ifPresent(parts::add);
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
    }

    private Optional<String> pressures(PackageGround carried, PackageGround other) {
        return carried.patch(Position.DRIVE)
                .value()
                .flatMap(was ->
                        other.patch(Position.DRIVE).value().map(is -> "drives press " + fromTo(was.mean(), is.mean())));
    }

    private String fromTo(Pressure was, Pressure is) {
        Quantities q = new Quantities(si);
        return same(q.pressure(was), q.pressure(is), "");
    }

    private static String same(String was, String is, String per) {
        return was.equals(is) ? is + " as now" + per : was + " -> " + is + per;
    }

    private Optional<String> holds(PackageGround carried, PackageGround other) {
        return wetHold(carried)
                .flatMap(was -> wetHold(other)
                        .map(is -> "would slide across a wet slope from somewhere in " + same(was, is, "")));
    }

    /** '4 to 8 deg': the friction of wet grass is known no better. */
    private static Optional<String> wetHold(PackageGround p) {
        return p.hold(Wetness.WET.low())
                .value()
                .flatMap(low -> p.hold(Wetness.WET.high())
                        .value()
                        .map(high -> Figures.decimals(low.degrees(), 0) + " to " + Figures.decimals(high.degrees(), 0)
                                + " deg"));
    }

    private Optional<String> heights(Change change) {
        Quantities q = new Quantities(si);
        return change.rise(Position.DRIVE)
                .value()
                .flatMap(rear -> change.rise(Position.CASTER)
                        .value()
                        .map(front -> "axles rise " + q.shift(rear.by()) + " and " + q.shift(front.by())
                                + (rear.fromSizes() || front.fromSizes() ? " by their sizes" : "")));
    }

    /** The loads across at the ceiling, as the machine stands now. */
    public Optional<String> across(MachineGround ground, PackageGround p) {
        Quantities q = new Quantities(si);
        return p.stance()
                .then(s -> SlopeLoads.across(s, ground.ceiling()))
                .value()
                .map(l -> "Standing across " + angle(ground.ceiling()) + ", its downhill wheels would carry "
                        + q.mass(l.lower()) + " and its uphill ones " + q.mass(l.upper()) + ".");
    }

    private static String angle(Angle x) {
        return Quantities.angle(x);
    }

    /** The depth at which the pressure is told once more. */
    public String depth() {
        Length depth = PackageGround.DEPTH;
        return si ? Figures.decimals(depth.meters() * 100, 0) + " cm" : Figures.decimals(depth.inches(), 0) + " in";
    }
}
