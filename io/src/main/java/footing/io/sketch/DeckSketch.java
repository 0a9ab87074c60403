package footing.io.sketch;

import footing.core.fitting.SetUp;
import footing.core.fleet.Measure;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import footing.core.quantity.Length;
import footing.io.sketch.Pen.Line;
import footing.io.sketch.Pen.Side;
import footing.io.sketch.Pen.Spot;
import footing.io.words.Quantities;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The machine from the side, forward to the right, its wheels and blades before (dashed) and after (firm); and the blades
 * alone below, their heights drawn larger than their lengths so that a change shows.
 */
final class DeckSketch {
    private static final List<Integer> TIMES = List.of(40, 20, 10, 5, 2, 1);
    private static final double MOST_RANGE = 70;
    private static final double LEFT = 70;
    private static final double RIGHT = 250;
    private static final double EDGE = 8;

    private final SetUp setUp;
    private final SetUp.BladeLines blades;
    private final Quantities q;
    private final Pen pen = new Pen();

    private DeckSketch(SetUp setUp, SetUp.BladeLines blades, boolean si) {
        this.setUp = setUp;
        this.blades = blades;
        q = new Quantities(si);
    }

    /** Empty if the deck or the wheels' heights are not known. */
    static Optional<Sketch> of(SetUp setUp, boolean si) {
        return setUp.blades().value().map(b -> new DeckSketch(setUp, b, si).drawn());
    }

    private Sketch drawn() {
        double floor = side();
        double bottom = large(floor + 34);
        String told = "rear blade tip " + q.length(blades.before().rearHeight()) + " before and "
                + q.length(blades.after().rearHeight()) + " after, front tip "
                + q.length(blades.before().frontHeight()) + " before and "
                + q.length(blades.after().frontHeight()) + " after, hangers left alone; due "
                + q.length(blades.wanted().rearHeight()) + " and "
                + q.length(blades.wanted().frontHeight());
        return new Sketch(
                "The deck before and after " + setUp.change().after().id(),
                told,
                Sketch.WIDE,
                (int) Math.ceil(bottom),
                pen.marks());
    }

    /** Draws the machine from the side and gives back where its floor is. */
    private double side() {
        double wheelbase = setUp.measures().get(Measure.WHEELBASE).orElseThrow();
        WheelPair after = setUp.change().after();
        double rear = Math.max(
                diameter(after.drive()), diameter(setUp.change().before().drive()));
        double front = Math.max(
                diameter(after.caster()), diameter(setUp.change().before().caster()));
        double scale = (Sketch.WIDE - 2 * EDGE) / (wheelbase + rear / 2 + front / 2);
        double floor = EDGE + scale * Math.max(rear, front) * 1.02;
        Spot origin = new Spot(EDGE + scale * rear / 2, floor);
        standing(origin, scale, setUp.change().before(), Line.WAS);
        blade(origin, scale, blades.before(), Line.WAS);
        standing(origin, scale, after, Line.IS);
        blade(origin, scale, blades.after(), Line.IS);
        pen.line(new Spot(2, floor), new Spot(Sketch.WIDE - 2, floor), Line.FIRM);
        pen.text(new Spot(LEFT + (RIGHT - LEFT) / 2, floor + 14), Side.MIDDLE, "blades, to scale; forward is right");
        return floor;
    }

    private void standing(Spot origin, double scale, WheelPair pair, Line line) {
        double wheelbase = setUp.measures().get(Measure.WHEELBASE).orElseThrow();
        Spot drive = origin.plus(0, -scale * axle(pair.drive()));
        Spot caster = origin.plus(scale * wheelbase, -scale * axle(pair.caster()));
        pen.circle(drive, scale * diameter(pair.drive()) / 2, line, line == Line.IS);
        pen.circle(caster, scale * diameter(pair.caster()) / 2, line, line == Line.IS);
        pen.dot(drive, 1.5).dot(caster, 1.5);
    }

    private void blade(Spot origin, double scale, SetUp.Blades b, Line line) {
        pen.line(
                origin.plus(
                        scale * b.rearAhead().meters(), -scale * b.rearHeight().meters()),
                origin.plus(
                        scale * b.frontAhead().meters(),
                        -scale * b.frontHeight().meters()),
                line);
    }

    private static double diameter(WheelFacts wheel) {
        OptionalDouble x = wheel.get(Measure.DIAMETER);
        return x.isPresent()
                ? x.getAsDouble()
                : 2 * wheel.get(Measure.LOADED_RADIUS).orElse(0.2);
    }

    /** Above the ground; half the diameter where nobody measured it. */
    private static double axle(WheelFacts wheel) {
        return wheel.get(Measure.LOADED_RADIUS).orElse(diameter(wheel) / 2);
    }

    /** The blades alone, and their heights at either end; gives back where the drawing ends. */
    private double large(double top) {
        double span = blades.after().frontAhead().meters()
                - blades.after().rearAhead().meters();
        double wide = (RIGHT - LEFT) / span;
        double least = heights().min().orElseThrow();
        double range = heights().max().orElseThrow() - least;
        int times = TIMES.stream()
                .filter(t -> t * wide * range <= MOST_RANGE)
                .findFirst()
                .orElse(1);
        double tall = times * wide;
        double bottom = top + 24 + tall * range;
        boolean reset = !blades.wanted().equals(blades.before());
        ends(blades.before(), Line.WAS, bottom, tall, least);
        ends(blades.after(), Line.IS, bottom, tall, least);
        if (reset) {
            ends(blades.wanted(), Line.WANTED, bottom, tall, least);
        }
        pen.text(new Spot(EDGE, bottom + 22), Side.RIGHT, "rear");
        pen.text(new Spot(Sketch.WIDE - EDGE, bottom + 22), Side.LEFT, "front");
        pen.text(
                new Spot(Sketch.WIDE / 2.0, bottom + 22),
                Side.MIDDLE,
                times == 1 ? "to scale" : "heights drawn " + times + " times as large");
        key(bottom + 40, reset);
        return bottom + 48;
    }

    private DoubleStream heights() {
        return List.of(blades.before(), blades.after(), blades.wanted()).stream()
                .flatMapToDouble(b ->
                        DoubleStream.of(b.rearHeight().meters(), b.frontHeight().meters()));
    }

    private void ends(SetUp.Blades b, Line line, double bottom, double tall, double least) {
        Spot rear = new Spot(LEFT, bottom - tall * (b.rearHeight().meters() - least));
        Spot front = new Spot(RIGHT, bottom - tall * (b.frontHeight().meters() - least));
        pen.line(rear, front, line);
        boolean firm = line == Line.IS;
        boolean told = line == Line.WAS;
        if (firm || (told && apart(b.rearHeight(), blades.after().rearHeight(), tall))) {
            pen.text(rear.plus(-6, 4), Side.LEFT, q.length(b.rearHeight()));
        }
        if (firm || (told && apart(b.frontHeight(), blades.after().frontHeight(), tall))) {
            pen.text(front.plus(6, 4), Side.RIGHT, q.length(b.frontHeight()));
        }
    }

    /** Far enough for two texts. */
    private static boolean apart(Length one, Length other, double tall) {
        return Math.abs(one.meters() - other.meters()) * tall > 11;
    }

    private void key(double y, boolean reset) {
        double x = reset ? 20 : 60;
        x = entry(x, y, Line.WAS, reset ? "before" : "before, and due", reset ? 74 : 124);
        x = entry(x, y, Line.IS, "hangers left alone", 138);
        if (reset) {
            entry(x, y, Line.WANTED, "due", 50);
        }
    }

    private double entry(double x, double y, Line line, String text, double room) {
        pen.line(new Spot(x, y - 4), new Spot(x + 22, y - 4), line);
        pen.text(new Spot(x + 27, y), Side.RIGHT, text);
        return x + room;
    }
}
