package footing.io.sketch;

import footing.core.fitting.FitQuestion;
import footing.core.fleet.Measure;
import footing.core.quantity.Length;
import footing.io.sketch.Pen.Line;
import footing.io.sketch.Pen.Side;
import footing.io.sketch.Pen.Spot;
import footing.io.words.Figures;
import footing.io.words.Quantities;
import java.util.Optional;
import java.util.OptionalDouble;

/** The bolt holes of a drive wheel over the studs of the hub, at one scale: rings are holes, crosses are studs. */
final class BoltSketch {
    private static final double ROOM = 150;
    private static final double HOLE = 8;
    private static final double STUD = 5;
    private static final Spot MIDDLE = new Spot(Sketch.WIDE / 2.0, 88);

    private final Quantities q;
    private final double scale;

    private BoltSketch(boolean si, double largest) {
        q = new Quantities(si);
        scale = ROOM / largest;
    }

    /** A count and a circle, each if it is known. */
    private record Pattern(OptionalDouble bolts, OptionalDouble circle) {
        boolean isKnown() {
            return bolts.isPresent() && circle.isPresent();
        }
    }

    /** Empty if neither pattern is known. */
    static Optional<Sketch> of(FitQuestion question, boolean si) {
        Pattern hub = new Pattern(
                question.measures().get(Measure.HUB_BOLTS), question.measures().get(Measure.HUB_CIRCLE));
        Pattern wheel = new Pattern(
                question.wanted().drive().get(Measure.BOLTS),
                question.wanted().drive().get(Measure.CIRCLE));
        if (!hub.isKnown() && !wheel.isKnown()) {
            return Optional.empty();
        }
        double largest = Math.max(hub.circle().orElse(0), wheel.circle().orElse(0));
        return Optional.of(new BoltSketch(si, largest)
                .drawn(hub, wheel, question.wanted().drive().id()));
    }

    private Sketch drawn(Pattern hub, Pattern wheel, String id) {
        Pen pen = new Pen();
        if (wheel.isKnown()) {
            pattern(pen, wheel, false);
        }
        if (hub.isKnown()) {
            pattern(pen, hub, true);
        }
        pen.dot(MIDDLE, 1.5);
        String holes = "wheel " + told(wheel);
        String studs = "machine " + told(hub);
        pen.circle(new Spot(84, 186), 5, Line.IS, false).text(new Spot(96, 190), Side.RIGHT, holes);
        cross(pen, new Spot(84, 204), Line.FIRM);
        pen.text(new Spot(96, 208), Side.RIGHT, studs);
        return new Sketch("Bolt circle of " + id, holes + "; " + studs, Sketch.WIDE, 218, pen.marks());
    }

    private String told(Pattern p) {
        return p.isKnown()
                ? Figures.decimals(p.bolts().getAsDouble(), 0) + " on "
                        + q.length(new Length(p.circle().getAsDouble()))
                : "not measured";
    }

    private void pattern(Pen pen, Pattern p, boolean studs) {
        double radius = scale * p.circle().getAsDouble() / 2;
        pen.circle(MIDDLE, radius, studs ? Line.WAS : Line.THIN, false);
        int bolts = (int) p.bolts().getAsDouble();
        for (int i = 0; i < bolts; i++) {
            double turn = 2 * Math.PI * i / bolts - Math.PI / 2;
            Spot at = MIDDLE.plus(radius * Math.cos(turn), radius * Math.sin(turn));
            if (studs) {
                cross(pen, at, Line.FIRM);
            } else {
                pen.circle(at, HOLE, Line.IS, true);
            }
        }
    }

    private static void cross(Pen pen, Spot at, Line line) {
        pen.line(at.plus(-STUD, -STUD), at.plus(STUD, STUD), line)
                .line(at.plus(-STUD, STUD), at.plus(STUD, -STUD), line);
    }
}
