package footing.io.sketch;

import footing.core.fleet.Position;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.quantity.Length;
import footing.io.sketch.Pen.Line;
import footing.io.sketch.Pen.Side;
import footing.io.sketch.Pen.Spot;
import footing.io.words.GroundWords;
import footing.io.words.Quantities;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The prints of a drive and a caster on firm ground, seen from above, travel upward; all packages at one scale. The
 * outline of the package carried now is dashed over the others.
 */
final class PrintSketch {
    private static final double DRIVE_ROOM = 176;
    private static final double CASTER_ROOM = 108;
    private static final double HIGHEST = 150;
    private static final double MOST_SCALE = 900;
    private static final int HEAD = 26;
    private static final int FOOT = 40;
    private static final int POINTS = 96;

    private final PackageGround carried;
    private final Quantities q;
    private final GroundWords words;
    private final double scale;
    private final double tallest;

    private PrintSketch(List<PackageGround> packages, boolean si) {
        carried = packages.get(0);
        q = new Quantities(si);
        words = new GroundWords(si);
        double widestDrive = most(packages, Position.DRIVE, Patch::width);
        double widestCaster = most(packages, Position.CASTER, Patch::width);
        double longest =
                Math.max(most(packages, Position.DRIVE, Patch::length), most(packages, Position.CASTER, Patch::length));
        scale = Math.min(
                Math.min(MOST_SCALE, HIGHEST / longest),
                Math.min(DRIVE_ROOM / widestDrive, CASTER_ROOM / widestCaster));
        tallest = longest * scale;
    }

    private interface Extent {
        @org.jspecify.annotations.Nullable
        Length of(Patch patch);
    }

    private static double most(List<PackageGround> packages, Position position, Extent extent) {
        return packages.stream()
                .flatMap(p -> p.patch(position).value().stream())
                .flatMap(p -> Optional.ofNullable(extent.of(p)).stream())
                .mapToDouble(Length::meters)
                .max()
                .orElse(0.05);
    }

    /** A sketch for each package of which a print is known, in their order; the carried one is the first of them. */
    static List<Sketch> all(List<PackageGround> packages, boolean si) {
        PrintSketch sketches = new PrintSketch(packages, si);
        List<Sketch> all = new ArrayList<>();
        for (PackageGround p : packages) {
            boolean drawn = p.patch(Position.DRIVE).value().isPresent()
                    || p.patch(Position.CASTER).value().isPresent();
            if (drawn) {
                all.add(sketches.of(p));
            }
        }
        return all;
    }

    private Sketch of(PackageGround p) {
        Pen pen = new Pen();
        double middle = HEAD + tallest / 2;
        List<String> told = new ArrayList<>();
        told.add(one(pen, p, Position.DRIVE, new Spot(96, middle)));
        told.add(one(pen, p, Position.CASTER, new Spot(252, middle)));
        pen.arrow(new Spot(8, HEAD + 18), new Spot(8, HEAD - 6));
        pen.text(new Spot(14, HEAD - 10), Side.RIGHT, "travel");
        bar(pen);
        return new Sketch(
                "Prints of " + p.wheels().id(),
                String.join("; ", told),
                Sketch.WIDE,
                (int) Math.ceil(HEAD + tallest + FOOT),
                pen.marks());
    }

    private String one(Pen pen, PackageGround p, Position position, Spot middle) {
        String name = position == Position.DRIVE ? "drive" : "caster";
        Optional<Patch> patch = p.patch(position).value();
        Spot below = new Spot(middle.x(), HEAD + tallest + 16);
        pen.text(below, Side.MIDDLE, name);
        if (patch.isEmpty()) {
            pen.text(middle, Side.MIDDLE, "not known");
            return name + " not known";
        }
        if (!p.wheels().id().equals(carried.wheels().id())) {
            carried.patch(position).value().ifPresent(was -> print(pen, was, middle, Line.WAS));
        }
        print(pen, patch.get(), middle, Line.IS);
        String numbers = words.pressure(patch.get()) + ", " + q.area(patch.get().area());
        pen.text(below.plus(0, 14), Side.MIDDLE, numbers);
        Length length = patch.get().length();
        Length width = patch.get().width();
        return name + " " + numbers
                + (length == null || width == null
                        ? ""
                        : ", " + q.length(length) + " long, " + q.length(width) + " wide");
    }

    /** |2x/w|ⁿ + |2y/l|ⁿ = 1. */
    private void print(Pen pen, Patch patch, Spot middle, Line line) {
        Length length = patch.length();
        Length width = patch.width();
        if (length == null || width == null) {
            return;
        }
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double turn = 2 * Math.PI * i / POINTS;
            points.add(middle.plus(
                    scale * width.meters() / 2 * powered(Math.cos(turn), 2 / patch.shape()),
                    scale * length.meters() / 2 * powered(Math.sin(turn), 2 / patch.shape())));
        }
        pen.outline(points, line, line == Line.IS);
    }

    private static double powered(double x, double power) {
        return Math.signum(x) * Math.pow(Math.abs(x), power);
    }

    private void bar(Pen pen) {
        Length bar = q.si() ? new Length(0.05) : Length.ofInches(2);
        Spot end = new Spot(Sketch.WIDE - 6, 12);
        Spot start = end.plus(-bar.meters() * scale, 0);
        pen.line(start, end, Line.FIRM).line(start.plus(0, -3), start.plus(0, 3), Line.FIRM);
        pen.line(end.plus(0, -3), end.plus(0, 3), Line.FIRM);
        pen.text(start.plus(-5, 4), Side.LEFT, q.length(bar));
    }
}
