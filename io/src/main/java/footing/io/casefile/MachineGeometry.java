package footing.io.casefile;

import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.io.form.BodyFields;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.List;

/** Measures of a machine that are each possible, but not together: such a machine could not stand or cut. */
final class MachineGeometry {
    private static final List<Measure> LOADS =
            List.of(Measure.DRIVE_LEFT, Measure.DRIVE_RIGHT, Measure.CASTER_LEFT, Measure.CASTER_RIGHT);
    private static final List<Measure> OF_THE_DECK =
            List.of(Measure.HANGER_REAR, Measure.HANGER_FRONT, Measure.TIP_REAR, Measure.TIP_FRONT);
    private static final double MASSES_DIFFER = 0.15;
    private static final double SHARES_DIFFER = 0.05;
    private static final double STEEPEST = 0.25;

    private final Found machine;
    private final Measures measures;
    private final Problems problems;

    private MachineGeometry(Found machine, Measures measures, Problems problems) {
        this.machine = machine;
        this.measures = measures;
        this.problems = problems;
    }

    static void check(Found machine, Measures measures, Problems problems) {
        MachineGeometry all = new MachineGeometry(machine, measures, problems);
        all.center();
        all.loads();
        all.lift();
        all.deck();
    }

    private void center() {
        if (has(Measure.CENTER_AHEAD, Measure.WHEELBASE)) {
            double ahead = value(Measure.CENTER_AHEAD);
            if (!(ahead > 0 && ahead < value(Measure.WHEELBASE))) {
                error(
                        Measure.CENTER_AHEAD,
                        "the machine would tip over on level ground",
                        "try: a distance ahead of the drive axle, above 0 and below the wheelbase");
            }
        }
        if (has(Measure.CENTER_HEIGHT, Measure.WHEELBASE)
                && !(value(Measure.CENTER_HEIGHT) < value(Measure.WHEELBASE))) {
            error(Measure.CENTER_HEIGHT, "higher above the ground than the wheelbase is long", "measure it again");
        }
    }

    private void loads() {
        long stated = LOADS.stream().filter(measures::has).count();
        if (stated > 0 && stated < LOADS.size()) {
            problems.error(
                    machine.get("wheelLoads").at(),
                    "",
                    "a machine stands on all of its wheels",
                    "weigh all four, or state mass and frontShare instead");
        }
        if (measures.has(Measure.FRONT_SHARE)) {
            double share = value(Measure.FRONT_SHARE);
            if (!(share > 0 && share < 1)) {
                error(Measure.FRONT_SHARE, "both ends carry something", "try: the casters' share, such as 34 %");
            }
        }
        if (stated == LOADS.size()) {
            againstMass();
        }
    }

    private void againstMass() {
        double sum = LOADS.stream().mapToDouble(this::value).sum();
        if (has(Measure.MACHINE_MASS, Measure.OPERATOR_MASS)) {
            double whole = value(Measure.MACHINE_MASS) + value(Measure.OPERATOR_MASS);
            if (Math.abs(sum - whole) > MASSES_DIFFER * whole) {
                warn(Measure.MACHINE_MASS, "with the operator far from what the wheels carry", "weigh again");
            }
        }
        if (measures.has(Measure.FRONT_SHARE)) {
            double share = (value(Measure.CASTER_LEFT) + value(Measure.CASTER_RIGHT)) / sum;
            if (Math.abs(share - value(Measure.FRONT_SHARE)) > SHARES_DIFFER) {
                warn(Measure.FRONT_SHARE, "not what the wheel loads say", "the wheel loads count");
            }
        }
    }

    private void lift() {
        if (measures.has(Measure.LIFT_HEIGHT) != measures.has(Measure.LIFT_CASTERS)) {
            problems.error(
                    machine.get("lift").at(),
                    "",
                    "a lift has a height, and a load on the casters there",
                    "state both, or leave lift out");
        }
        if (has(Measure.LIFT_HEIGHT, Measure.WHEELBASE) && !(value(Measure.LIFT_HEIGHT) < value(Measure.WHEELBASE))) {
            error(Measure.LIFT_HEIGHT, "lifted as high as the wheelbase is long", "measure both again");
        }
        if (has(Measure.LIFT_CASTERS, Measure.DRIVE_LEFT)
                && LOADS.stream().allMatch(measures::has)
                && !(value(Measure.LIFT_CASTERS) < value(Measure.CASTER_LEFT) + value(Measure.CASTER_RIGHT))) {
            error(Measure.LIFT_CASTERS, "lifting the casters takes load off them", "weigh again");
        }
    }

    private void deck() {
        inOrder(Measure.HANGER_REAR, Measure.HANGER_FRONT);
        inOrder(Measure.TIP_REAR, Measure.TIP_FRONT);
        for (Measure m : OF_THE_DECK) {
            if (has(m, Measure.WHEELBASE) && !(value(m) >= 0 && value(m) <= value(Measure.WHEELBASE))) {
                error(
                        m,
                        "the deck would hang outside the wheelbase",
                        "distances run from the drive axle toward the casters; leave deck out if it stands on wheels"
                                + " of its own");
            }
        }
        if (has(Measure.TIP_REAR, Measure.TIP_FRONT) && measures.has(Measure.DECK_RAKE)) {
            double span = value(Measure.TIP_FRONT) - value(Measure.TIP_REAR);
            if (span > 0 && !(Math.abs(value(Measure.DECK_RAKE)) <= STEEPEST * span)) {
                error(Measure.DECK_RAKE, "no blade stands so steep", "try: 0.25 in, the front lower");
            }
        }
    }

    private void inOrder(Measure rear, Measure front) {
        if (has(rear, front) && !(value(rear) < value(front))) {
            error(front, "the front lies behind the rear", "distances run from the drive axle toward the casters");
        }
    }

    private boolean has(Measure one, Measure other) {
        return measures.has(one) && measures.has(other);
    }

    private double value(Measure measure) {
        return measures.get(measure).orElseThrow();
    }

    private void error(Measure measure, String message, String advice) {
        Found there = BodyFields.part(machine, measure);
        problems.error(there.at(), there.shown(), message, advice);
    }

    private void warn(Measure measure, String message, String advice) {
        Found there = BodyFields.part(machine, measure);
        problems.warn(there.at(), there.shown(), message, advice);
    }
}
