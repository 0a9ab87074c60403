package footing.web.bay;

import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import java.util.ArrayList;
import java.util.List;

/** What is measured of a machine at one stop of the work, in the order in which the bay goes. */
enum MeasureGroup {
    FLOOR(
            "On level floor, at pressure",
            Measure.WHEELBASE,
            Measure.TRACK_DRIVE,
            Measure.TRACK_CASTER,
            Measure.CLEARANCE_DRIVE,
            Measure.CLEARANCE_CASTER,
            Measure.CLEARANCE_CATCHER,
            Measure.CLEARANCE_SULKY),
    DECK(
            "The deck",
            Measure.DECK_HEIGHT,
            Measure.DECK_RAKE,
            Measure.TIP_REAR,
            Measure.TIP_FRONT,
            Measure.HANGER_REAR,
            Measure.HANGER_FRONT,
            Measure.THREAD_PITCH,
            Measure.HANGER_RATIO),
    SCALES(
            "On the scales, operator on",
            Measure.MACHINE_MASS,
            Measure.OPERATOR_MASS,
            Measure.DRIVE_LEFT,
            Measure.DRIVE_RIGHT,
            Measure.CASTER_LEFT,
            Measure.CASTER_RIGHT,
            Measure.FRONT_SHARE,
            Measure.LIFT_HEIGHT,
            Measure.LIFT_CASTERS,
            Measure.CENTER_HEIGHT,
            Measure.CENTER_AHEAD),
    HUBS("A wheel off", Measure.HUB_BOLTS, Measure.HUB_CIRCLE, Measure.FORK_AXLE, Measure.FORK_WIDTH),
    ROUTE("The manual and the route", Measure.TOP_SPEED, Measure.SLOPE_LIMIT, Measure.GATE, Measure.TRAILER);

    /** What is written down after fitting. */
    static final List<Measure> FITTED = List.of(
            Measure.FITTED_REAR_LEFT,
            Measure.FITTED_REAR_RIGHT,
            Measure.FITTED_FRONT_LEFT,
            Measure.FITTED_FRONT_RIGHT,
            Measure.TURNED_REAR,
            Measure.TURNED_FRONT);

    private static final List<Measure> WHEEL = List.of(
            Measure.PRESSURE,
            Measure.MAX_LOAD,
            Measure.MAX_LOAD_AT,
            Measure.MAX_SPEED,
            Measure.LOADED_RADIUS,
            Measure.DIAMETER,
            Measure.WIDTH,
            Measure.RIM,
            Measure.BOLTS,
            Measure.CIRCLE,
            Measure.OFFSET,
            Measure.AXLE,
            Measure.HUB_LENGTH,
            Measure.MASS,
            Measure.PRINT_LENGTH,
            Measure.PRINT_WIDTH,
            Measure.PRINT_SHAPE,
            Measure.PRINT_LOAD,
            Measure.PRINT_PRESSURE,
            Measure.STIFFNESS);
    private static final List<Measure> OF_DRIVES = List.of(Measure.BOLTS, Measure.CIRCLE, Measure.OFFSET);
    private static final List<Measure> OF_CASTERS = List.of(Measure.AXLE, Measure.HUB_LENGTH);
    private static final List<Measure> OF_AIR = List.of(Measure.PRESSURE, Measure.MAX_LOAD_AT, Measure.PRINT_PRESSURE);

    private final String title;
    private final List<Measure> measures;

    MeasureGroup(String title, Measure... measures) {
        this.title = title;
        this.measures = List.of(measures);
    }

    String title() {
        return title;
    }

    List<Measure> measures() {
        return measures;
    }

    /** What is measured of a wheel, the sidewall first. */
    static List<Measure> ofWheel(Position position, boolean holdsAir) {
        List<Measure> all = new ArrayList<>(WHEEL);
        all.removeAll(position == Position.DRIVE ? OF_CASTERS : OF_DRIVES);
        if (!holdsAir) {
            all.removeAll(OF_AIR);
        }
        return all;
    }
}
