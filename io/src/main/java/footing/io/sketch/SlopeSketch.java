package footing.io.sketch;

import footing.core.fleet.Measure;
import footing.core.fleet.WheelFacts;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.core.ground.SlopeLoads;
import footing.core.ground.Stance;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.io.sketch.Pen.Line;
import footing.io.sketch.Pen.Side;
import footing.io.sketch.Pen.Spot;
import footing.io.words.Figures;
import footing.io.words.Quantities;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A machine seen from behind, standing across its ceiling slope: the drive tires, the center of gravity, its plumb line
 * and what the wheels of either side carry. Downhill is to the right. Shown only beside the caution for slopes.
 */
final class SlopeSketch {
    private static final double ACROSS = 196;
    private static final int HEAD = 20;

    private final Stance stance;
    private final SlopeLoads loads;
    private final Angle slope;
    private final Quantities q;
    private final double scale;
    private final Spot origin;
    private final int height;

    private SlopeSketch(Stance stance, SlopeLoads loads, Angle slope, boolean si) {
        this.stance = stance;
        this.loads = loads;
        this.slope = slope;
        q = new Quantities(si);
        double track = stance.frame().drive().meters();
        double tall = stance.center().height().meters();
        scale = ACROSS / Math.max(track, tall);
        double top = scale * (tall + track * Math.sin(slope.radians()) / 2);
        origin = new Spot(Sketch.WIDE / 2.0 - 14, HEAD + top + 12);
        height = (int) Math.ceil(origin.y() + scale * track * Math.sin(slope.radians()) / 2 + 56);
    }

    /** Empty if the machine's stance is not known, or it would have tipped. */
    static Optional<Sketch> of(MachineGround ground, PackageGround p, boolean si) {
        return p.stance()
                .then(s -> SlopeLoads.across(s, ground.ceiling())
                        .map(l -> new SlopeSketch(s, l, ground.ceiling(), si).drawn(p)))
                .value();
    }

    /** A place x downhill along the slope and y above it, in meters. */
    private Spot at(double x, double y) {
        double sine = Math.sin(slope.radians());
        double cosine = Math.cos(slope.radians());
        return origin.plus(scale * (x * cosine + y * sine), scale * (x * sine - y * cosine));
    }

    private Sketch drawn(PackageGround p) {
        Pen pen = new Pen();
        double half = stance.frame().drive().meters() / 2;
        ground(pen, half);
        tire(pen, p.wheels().drive(), -half);
        tire(pen, p.wheels().drive(), half);
        weight(pen, half);
        String down = q.mass(loads.lower());
        String up = q.mass(loads.upper());
        Spot downhill = at(half, 0);
        Spot uphill = at(-half, 0);
        pen.text(new Spot(downhill.x(), downhill.y() + 24), Side.MIDDLE, down);
        pen.text(new Spot(downhill.x(), downhill.y() + 37), Side.MIDDLE, "downhill side");
        pen.text(new Spot(uphill.x(), uphill.y() + 24), Side.MIDDLE, up);
        pen.text(new Spot(uphill.x(), uphill.y() + 37), Side.MIDDLE, "uphill side");
        String angle = Figures.decimals(slope.degrees(), 1) + " deg";
        return new Sketch(
                p.wheels().id() + " standing across " + angle,
                "the downhill wheels would carry " + down + ", the uphill ones " + up + "; center of gravity "
                        + q.length(stance.center().height()) + " up, drive tires "
                        + q.length(stance.frame().drive()) + " apart",
                Sketch.WIDE,
                height,
                pen.marks());
    }

    private void ground(Pen pen, double half) {
        Spot left = at(-1.45 * half, 0);
        Spot right = at(1.55 * half, 0);
        pen.line(left, right, Line.FIRM);
        pen.text(at(0, 0).plus(0, 44), Side.MIDDLE, Figures.decimals(slope.degrees(), 1) + " deg");
        double caster = stance.frame().caster().meters() / 2;
        for (double x : new double[] {-caster, caster}) {
            pen.line(at(x, 0), at(x, -0.03), Line.THIN);
        }
    }

    /** As wide and as high as is known; nothing where it is not. */
    private void tire(Pen pen, WheelFacts wheel, double middle) {
        OptionalDouble diameter = wheel.get(Measure.DIAMETER);
        OptionalDouble width = wheel.get(Measure.WIDTH);
        if (diameter.isEmpty() || width.isEmpty()) {
            pen.dot(at(middle, 0), 3);
            return;
        }
        double half = width.getAsDouble() / 2;
        double top = wheel.get(Measure.LOADED_RADIUS).orElse(diameter.getAsDouble() / 2) + diameter.getAsDouble() / 2;
        pen.outline(
                List.of(at(middle - half, 0), at(middle - half, top), at(middle + half, top), at(middle + half, 0)),
                Line.IS,
                true);
    }

    private void weight(Pen pen, double half) {
        double tall = stance.center().height().meters();
        double aside = Math.abs(stance.center().aside().meters());
        Spot center = at(aside, tall);
        pen.through(List.of(at(-half, 0), center, at(half, 0)), Line.THIN);
        // Straight down from the center, to where the slope is.
        double foot = aside + tall * Math.tan(slope.radians());
        pen.line(center, at(foot, 0), Line.WAS);
        pen.dot(center, 4);
        pen.text(center.plus(9, -4), Side.RIGHT, "center of gravity");
        pen.text(center.plus(9, 9), Side.RIGHT, q.length(new Length(tall)) + " up");
    }
}
