package footing.io.sketch;

import footing.core.ground.PackageGround;
import footing.core.quantity.Pressure;
import footing.io.sketch.Pen.Line;
import footing.io.sketch.Pen.Side;
import footing.io.sketch.Pen.Spot;
import footing.io.words.Quantities;
import java.util.List;
import java.util.Optional;

/** Pressure on the ground against inflation, of the drives of a package that holds air; both axes at one scale. */
final class InflationSketch {
    private static final double LEFT = 56;
    private static final double BOTTOM = 176;
    private static final double UP = 150;
    private static final double LONG = 240;
    private static final int STEP = 4;

    private final Quantities q;
    private final List<PackageGround.Point> curve;
    private final double first;
    private final double low;
    private final double scale;
    private final Pen pen = new Pen();

    private InflationSketch(List<PackageGround.Point> curve, boolean si) {
        this.curve = curve;
        q = new Quantities(si);
        first = Math.floor(least(curve, true) / STEP) * STEP;
        low = Math.floor(least(curve, false) / STEP) * STEP;
        double most = curve.stream().mapToDouble(p -> p.ground().psi()).max().orElseThrow();
        double last = curve.stream().mapToDouble(p -> p.inflation().psi()).max().orElseThrow();
        scale = Math.min(UP / (most - low), LONG / (last - first));
    }

    private static double least(List<PackageGround.Point> curve, boolean inflation) {
        return curve.stream()
                .mapToDouble(p -> (inflation ? p.inflation() : p.ground()).psi())
                .min()
                .orElseThrow();
    }

    /** Empty for a package whose drives hold no air, or of which too little is known. */
    static Optional<Sketch> of(PackageGround p, boolean si) {
        List<PackageGround.Point> curve = p.curve();
        return curve.size() < 2
                ? Optional.empty()
                : Optional.of(new InflationSketch(curve, si).drawn(p.wheels().id()));
    }

    private Spot at(double inflation, double ground) {
        return new Spot(LEFT + scale * (inflation - first), BOTTOM - scale * (ground - low));
    }

    private Sketch drawn(String id) {
        PackageGround.Point start = curve.get(0);
        PackageGround.Point end = curve.get(curve.size() - 1);
        double last = end.inflation().psi();
        double most = curve.stream().mapToDouble(p -> p.ground().psi()).max().orElseThrow();
        pen.line(at(first, low), at(last, low), Line.FIRM).line(at(first, low), at(first, most), Line.FIRM);
        for (double x = first; x <= last + 1e-9; x += STEP) {
            pen.line(at(x, low), at(x, low).plus(0, 4), Line.FIRM);
            pen.text(at(x, low).plus(0, 17), Side.MIDDLE, q.pressure(Pressure.ofPsi(x)));
        }
        for (double y = low; y <= most + 1e-9; y += STEP) {
            pen.line(at(first, y), at(first, y).plus(-4, 0), Line.FIRM);
            pen.text(at(first, y).plus(-7, 4), Side.LEFT, q.pressure(Pressure.ofPsi(y)));
        }
        pen.through(
                curve.stream()
                        .map(p -> at(p.inflation().psi(), p.ground().psi()))
                        .toList(),
                Line.IS);
        pen.text(new Spot(LEFT + 6, BOTTOM - scale * (most - low) - 6), Side.RIGHT, "on the ground");
        pen.text(at(last, low).plus(0, 32), Side.LEFT, "inflation");
        return new Sketch(
                "Pressure of the drives of " + id + " against their inflation",
                "from " + q.pressure(start.ground()) + " at " + q.pressure(start.inflation()) + " to "
                        + q.pressure(end.ground()) + " at " + q.pressure(end.inflation()),
                Sketch.WIDE,
                (int) BOTTOM + 40,
                pen.marks());
    }
}
