package footing.core.fitting;

import footing.core.fleet.Kind;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.Seat;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import java.util.EnumMap;
import java.util.Map;

/** An invented machine and wheels that fit it, to be spoiled one measure at a time. */
final class Bay {
    static final double INCH = 0.0254;
    static final double POUND = 0.45359237;
    static final double MPH = 0.44704;

    private Bay() {}

    static Measures machine() {
        Map<Measure, Double> m = new EnumMap<>(Measure.class);
        m.put(Measure.DRIVE_LEFT, 520 * POUND);
        m.put(Measure.DRIVE_RIGHT, 500 * POUND);
        m.put(Measure.CASTER_LEFT, 260 * POUND);
        m.put(Measure.CASTER_RIGHT, 265 * POUND);
        m.put(Measure.WHEELBASE, 53.7 * INCH);
        m.put(Measure.TRACK_DRIVE, 41.9 * INCH);
        m.put(Measure.TRACK_CASTER, 37.3 * INCH);
        m.put(Measure.CENTER_HEIGHT, 21 * INCH);
        m.put(Measure.HUB_BOLTS, 5.0);
        m.put(Measure.HUB_CIRCLE, 4.5 * INCH);
        m.put(Measure.FORK_AXLE, 0.75 * INCH);
        m.put(Measure.FORK_WIDTH, 7.05 * INCH);
        m.put(Measure.CLEARANCE_DRIVE, 1.5 * INCH);
        m.put(Measure.CLEARANCE_CASTER, 1.25 * INCH);
        m.put(Measure.TOP_SPEED, 12 * MPH);
        return Measures.of(m).with(Seat.CONE);
    }

    static Measures drive() {
        Map<Measure, Double> m = new EnumMap<>(Measure.class);
        m.put(Measure.DIAMETER, 23.6 * INCH);
        m.put(Measure.WIDTH, 11.8 * INCH);
        m.put(Measure.LOADED_RADIUS, 11.1 * INCH);
        m.put(Measure.MASS, 42 * POUND);
        m.put(Measure.BOLTS, 5.0);
        m.put(Measure.CIRCLE, 4.5 * INCH);
        m.put(Measure.OFFSET, 0.0);
        m.put(Measure.MAX_LOAD, 1000 * POUND);
        m.put(Measure.MAX_SPEED, 15 * MPH);
        return Measures.of(m).with(Seat.CONE);
    }

    static Measures caster() {
        Map<Measure, Double> m = new EnumMap<>(Measure.class);
        m.put(Measure.DIAMETER, 13 * INCH);
        m.put(Measure.WIDTH, 6.5 * INCH);
        m.put(Measure.LOADED_RADIUS, 6.2 * INCH);
        m.put(Measure.MASS, 12 * POUND);
        m.put(Measure.AXLE, 0.75 * INCH);
        m.put(Measure.HUB_LENGTH, 7 * INCH);
        m.put(Measure.MAX_LOAD, 600 * POUND);
        m.put(Measure.MAX_SPEED, 15 * MPH);
        return Measures.of(m);
    }

    static WheelFacts wheel(String id, Position position, Measures measures) {
        return new WheelFacts(id, Kind.AIRLESS, position, null, measures, Map.of());
    }

    static WheelPair pair(String id, Measures drive, Measures caster) {
        return new WheelPair(
                id, wheel(id + "-drive", Position.DRIVE, drive), wheel(id + "-caster", Position.CASTER, caster));
    }

    static Fit fit(Measures machine, Measures drive, Measures caster) {
        return Fit.of(new FitQuestion("m", machine, pair("old", drive(), caster()), pair("new", drive, caster)));
    }
}
