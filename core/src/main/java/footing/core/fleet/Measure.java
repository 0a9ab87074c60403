package footing.core.fleet;

import java.util.Arrays;
import java.util.List;

/**
 * Everything a case can state of the bodies themselves, for the ground and the bay, and the terms of their warranty: its
 * name in the file, what it counts, and the values it takes. None has a default: what was not measured is not known, and no answer about money
 * depends on one.
 *
 * <p>The ranges only refuse slips (a wheel of 24 ft); they are common practice, no source.
 */
public enum Measure {
    MASS(Place.ASSEMBLY, "mass", Physical.MASS, Range.above(0, 1000), "mass of one"),
    LOADED_RADIUS(Place.ASSEMBLY, "loadedRadius", Physical.LENGTH, Range.above(0, 1), "axle height above firm ground"),
    DIAMETER(Place.ASSEMBLY, "diameter", Physical.LENGTH, Range.above(0, 2), "diameter off the ground"),
    WIDTH(Place.ASSEMBLY, "width", Physical.LENGTH, Range.above(0, 1), "width of the tire"),
    RIM(Place.ASSEMBLY, "rim", Physical.LENGTH, Range.above(0, 1), "diameter of the rim"),
    PRINT_LENGTH(Place.ASSEMBLY, "print.length", Physical.LENGTH, Range.above(0, 1), "length of its print"),
    PRINT_WIDTH(Place.ASSEMBLY, "print.width", Physical.LENGTH, Range.above(0, 1), "width of its print"),
    PRINT_SHAPE(Place.ASSEMBLY, "print.shape", Physical.NUMBER, Range.of(1, 100), "shape exponent of its print"),
    PRINT_LOAD(Place.ASSEMBLY, "print.atLoad", Physical.MASS, Range.above(0, 5000), "load on the wheel it printed"),
    PRINT_PRESSURE(
            Place.ASSEMBLY, "print.atPressure", Physical.PRESSURE, Range.above(0, 1e6), "pressure it printed at"),
    STIFFNESS(Place.ASSEMBLY, "stiffness", Physical.STIFFNESS, Range.above(0, 1e8), "vertical stiffness"),
    PRESSURE(Place.ASSEMBLY, "pressure", Physical.PRESSURE, Range.above(0, 1e6), "pressure it is run at"),
    BOLTS(Place.ASSEMBLY, "bolts", Physical.NUMBER, Range.whole(1, 20), "bolt holes"),
    CIRCLE(Place.ASSEMBLY, "circle", Physical.LENGTH, Range.above(0, 1), "bolt circle"),
    OFFSET(
            Place.ASSEMBLY,
            "offset",
            Physical.SHIFT,
            Range.of(-0.5, 0.5),
            "tire's middle outside its mounting face; negative inside"),
    MAX_LOAD(Place.ASSEMBLY, "maxLoad", Physical.MASS, Range.above(0, 10000), "load it is rated for"),
    MAX_LOAD_AT(Place.ASSEMBLY, "maxLoad.at", Physical.PRESSURE, Range.above(0, 1e6), "pressure of the rating"),
    MAX_SPEED(Place.ASSEMBLY, "maxSpeed", Physical.SPEED, Range.above(0, 60), "speed it is rated for"),
    AXLE(Place.ASSEMBLY, "axle", Physical.LENGTH, Range.above(0, 0.2), "bore for the caster axle"),
    HUB_LENGTH(Place.ASSEMBLY, "hubLength", Physical.LENGTH, Range.above(0, 1), "length of the caster hub"),
    WARRANTY_HOURS(Place.ASSEMBLY, "warranty.hours", Physical.NUMBER, Range.above(0, 1e5), "hours of its warranty"),
    WARRANTY_MONTHS(Place.ASSEMBLY, "warranty.months", Physical.NUMBER, Range.above(0, 600), "months of its warranty"),

    MACHINE_MASS(Place.MACHINE, "mass", Physical.MASS, Range.above(0, 20000), "mass without operator"),
    OPERATOR_MASS(Place.MACHINE, "operatorMass", Physical.MASS, Range.above(0, 500), "mass of the operator"),
    DRIVE_LEFT(Place.MACHINE, "wheelLoads.driveLeft", Physical.MASS, Range.above(0, 5000), "on the left drive"),
    DRIVE_RIGHT(Place.MACHINE, "wheelLoads.driveRight", Physical.MASS, Range.above(0, 5000), "on the right drive"),
    CASTER_LEFT(Place.MACHINE, "wheelLoads.casterLeft", Physical.MASS, Range.above(0, 5000), "on the left caster"),
    CASTER_RIGHT(Place.MACHINE, "wheelLoads.casterRight", Physical.MASS, Range.above(0, 5000), "on the right caster"),
    FRONT_SHARE(Place.MACHINE, "frontShare", Physical.SHARE, Range.of(0, 1), "of the whole on the casters"),
    WHEELBASE(Place.MACHINE, "wheelbase", Physical.LENGTH, Range.above(0, 10), "drive axle to casters' contact"),
    TRACK_DRIVE(Place.MACHINE, "track.drive", Physical.LENGTH, Range.above(0, 10), "between the drive tires' middles"),
    TRACK_CASTER(
            Place.MACHINE, "track.caster", Physical.LENGTH, Range.above(0, 10), "between the caster tires' middles"),
    CENTER_HEIGHT(
            Place.MACHINE, "centerOfGravity.height", Physical.LENGTH, Range.above(0, 5), "height of center of gravity"),
    CENTER_AHEAD(
            Place.MACHINE,
            "centerOfGravity.ahead",
            Physical.SHIFT,
            Range.of(-10, 10),
            "center of gravity ahead of drive axle"),
    LIFT_HEIGHT(Place.MACHINE, "lift.height", Physical.LENGTH, Range.above(0, 10), "casters lifted for weighing"),
    LIFT_CASTERS(Place.MACHINE, "lift.casters", Physical.MASS, Range.above(0, 10000), "on both casters, lifted"),
    SLOPE_LIMIT(Place.MACHINE, "slopeLimit", Physical.NUMBER, Range.above(0, 45), "the manual's slope limit, degrees"),
    HANGER_REAR(Place.MACHINE, "deck.hangers.rear", Physical.SHIFT, Range.of(-10, 10), "rear hangers, ahead"),
    HANGER_FRONT(Place.MACHINE, "deck.hangers.front", Physical.SHIFT, Range.of(-10, 10), "front hangers, ahead"),
    TIP_REAR(Place.MACHINE, "deck.tips.rear", Physical.SHIFT, Range.of(-10, 10), "rear blade tip, ahead"),
    TIP_FRONT(Place.MACHINE, "deck.tips.front", Physical.SHIFT, Range.of(-10, 10), "front blade tip, ahead"),
    THREAD_PITCH(Place.MACHINE, "deck.threadPitch", Physical.LENGTH, Range.above(0, 0.02), "thread pitch of hangers"),
    HANGER_RATIO(Place.MACHINE, "deck.ratio", Physical.NUMBER, Range.above(0, 10), "deck motion per hanger motion"),
    DECK_HEIGHT(Place.MACHINE, "deck.height", Physical.LENGTH, Range.above(0, 0.5), "height of cut to reach"),
    DECK_RAKE(Place.MACHINE, "deck.rake", Physical.SHIFT, Range.of(-0.1, 0.1), "rake to reach, front lower"),
    HUB_BOLTS(Place.MACHINE, "hub.drive.bolts", Physical.NUMBER, Range.whole(1, 20), "studs on a drive hub"),
    HUB_CIRCLE(Place.MACHINE, "hub.drive.circle", Physical.LENGTH, Range.above(0, 1), "bolt circle of a drive hub"),
    FORK_AXLE(Place.MACHINE, "hub.caster.axle", Physical.LENGTH, Range.above(0, 0.2), "caster axle bolt"),
    FORK_WIDTH(Place.MACHINE, "hub.caster.hubLength", Physical.LENGTH, Range.above(0, 1), "room for the caster hub"),
    CLEARANCE_DRIVE(
            Place.MACHINE, "clearance.drive", Physical.LENGTH, Range.above(0, 1), "least gap around a drive tire now"),
    CLEARANCE_CASTER(
            Place.MACHINE, "clearance.caster", Physical.LENGTH, Range.above(0, 1), "least gap around a caster now"),
    CLEARANCE_CATCHER(
            Place.MACHINE, "clearance.catcher", Physical.LENGTH, Range.above(0, 5), "gap from drive tire to catcher"),
    CLEARANCE_SULKY(
            Place.MACHINE, "clearance.sulky", Physical.LENGTH, Range.above(0, 5), "gap from drive tire to sulky"),
    GATE(Place.MACHINE, "gate", Physical.LENGTH, Range.above(0, 20), "narrowest gate on the route"),
    TRAILER(Place.MACHINE, "trailer", Physical.LENGTH, Range.above(0, 20), "room for it on the trailer"),
    TOP_SPEED(Place.MACHINE, "topSpeed", Physical.SPEED, Range.above(0, 60), "top speed"),
    FITTED_REAR_LEFT(
            Place.MACHINE, "fitted.tips.rearLeft", Physical.LENGTH, Range.above(0, 0.5), "rear left blade tip, fitted"),
    FITTED_REAR_RIGHT(
            Place.MACHINE,
            "fitted.tips.rearRight",
            Physical.LENGTH,
            Range.above(0, 0.5),
            "rear right blade tip, fitted"),
    FITTED_FRONT_LEFT(
            Place.MACHINE,
            "fitted.tips.frontLeft",
            Physical.LENGTH,
            Range.above(0, 0.5),
            "front left blade tip, fitted"),
    FITTED_FRONT_RIGHT(
            Place.MACHINE,
            "fitted.tips.frontRight",
            Physical.LENGTH,
            Range.above(0, 0.5),
            "front right blade tip, fitted"),
    TURNED_REAR(
            Place.MACHINE, "fitted.turns.rear", Physical.NUMBER, Range.of(-200, 200), "turns given to rear hangers"),
    TURNED_FRONT(
            Place.MACHINE, "fitted.turns.front", Physical.NUMBER, Range.of(-200, 200), "turns given to front hangers");

    private final Place place;
    private final String key;
    private final Physical physical;
    private final Range range;
    private final String label;

    Measure(Place place, String key, Physical physical, Range range, String label) {
        this.place = place;
        this.key = key;
        this.physical = physical;
        this.range = range;
        this.label = label;
    }

    /** Whose it is: an assembly's or a machine's. */
    public Place place() {
        return place;
    }

    /** The name in the file; {@code track.drive} is the key {@code drive} under {@code track}. */
    public String key() {
        return key;
    }

    public Physical physical() {
        return physical;
    }

    public Range range() {
        return range;
    }

    /** What it is, in words. */
    public String label() {
        return label;
    }

    public static List<Measure> of(Place place) {
        return Arrays.stream(values()).filter(m -> m.place == place).toList();
    }
}
