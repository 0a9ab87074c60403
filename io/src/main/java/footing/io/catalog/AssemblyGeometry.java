package footing.io.catalog;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Place;
import footing.core.fleet.Position;
import footing.core.fleet.SidewallSize;
import footing.io.form.BodyFields;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.List;
import java.util.Optional;

/** Measures of an assembly that are each possible, but not together or not on a thing of this kind. */
public final class AssemblyGeometry {
    private static final double PRINT_SPREADS = 1.1;
    private static final double SIZES_DIFFER = 0.1;
    private static final List<Measure> OF_A_DRIVE = List.of(Measure.BOLTS, Measure.CIRCLE, Measure.OFFSET);
    private static final List<Measure> OF_A_CASTER = List.of(Measure.AXLE, Measure.HUB_LENGTH);
    private static final List<Measure> OF_AIR = List.of(Measure.PRESSURE, Measure.PRINT_PRESSURE, Measure.MAX_LOAD_AT);

    private final Case.Assembly assembly;
    private final Measures measures;
    private final Found part;
    private final Problems problems;

    private AssemblyGeometry(Case.Assembly assembly, Found part, Problems problems) {
        this.assembly = assembly;
        this.measures = assembly.measures();
        this.part = part;
        this.problems = problems;
    }

    public static void check(Case.Assembly assembly, Found part, Problems problems) {
        new AssemblyGeometry(assembly, part, problems).check();
    }

    private void check() {
        wheel();
        print();
        String position = AssemblyForm.word(assembly.position());
        if (assembly.position() == Position.CASTER) {
            refuse(OF_A_DRIVE, "a caster turns on an axle bolt and has none");
            Found seat = part.get(BodyFields.seatPath(Place.ASSEMBLY));
            if (measures.seat() != null) {
                problems.error(seat.at(), "", "a caster turns on an axle bolt and has none", "leave it out");
            }
        } else {
            refuse(OF_A_CASTER, "a " + position + " wheel is bolted to a hub and has none");
        }
        if (!assembly.kind().holdsAir()) {
            refuse(OF_AIR, "this assembly is " + AssemblyForm.word(assembly.kind()) + " and holds no air");
        }
        size();
    }

    private void refuse(List<Measure> some, String why) {
        some.stream().filter(measures::has).forEach(m -> error(m, why, "leave it out"));
    }

    private void wheel() {
        less(Measure.RIM, Measure.DIAMETER, 1, "a rim is smaller than the tire on it");
        less(Measure.WIDTH, Measure.DIAMETER, 1, "no such tire is wider than high");
        less(Measure.LOADED_RADIUS, Measure.DIAMETER, 0.5, "under load the axle stands at most half the diameter high");
        more(Measure.LOADED_RADIUS, Measure.RIM, 0.5, "the rim would stand on the ground");
        less(Measure.CIRCLE, Measure.RIM, 1, "the bolt circle lies inside the rim");
        less(Measure.AXLE, Measure.DIAMETER, 0.5, "the bore is far smaller than the wheel");
        if (measures.has(Measure.WIDTH) && measures.has(Measure.OFFSET)) {
            double most = value(Measure.WIDTH) / 2;
            if (!(Math.abs(value(Measure.OFFSET)) <= most)) {
                error(
                        Measure.OFFSET,
                        "the mounting face would lie beyond the rim",
                        "at most half the width either way; negative if the tire's middle lies inside the face");
            }
        }
    }

    private void print() {
        less(Measure.PRINT_WIDTH, Measure.WIDTH, PRINT_SPREADS, "a print is hardly wider than the tire");
        less(Measure.PRINT_LENGTH, Measure.DIAMETER, 1, "a print is shorter than the tire is high");
        if (measures.has(Measure.PRINT_LENGTH) != measures.has(Measure.PRINT_WIDTH)) {
            problems.error(part.get("print").at(), "", "a print has a length and a width", "measure both");
        }
    }

    private void less(Measure small, Measure large, double times, String why) {
        if (measures.has(small) && measures.has(large) && !(value(small) <= times * value(large))) {
            error(small, why, "measure " + small.key() + " and " + large.key() + " again");
        }
    }

    private void more(Measure large, Measure small, double times, String why) {
        if (measures.has(small) && measures.has(large) && !(value(large) > times * value(small))) {
            error(large, why, "measure " + large.key() + " and " + small.key() + " again");
        }
    }

    private void size() {
        Optional<SidewallSize> size = Optional.ofNullable(assembly.size()).flatMap(SidewallSize::of);
        if (size.isPresent() && measures.has(Measure.DIAMETER)) {
            double nominal = size.get().diameter();
            if (Math.abs(value(Measure.DIAMETER) - nominal) > SIZES_DIFFER * nominal) {
                Found there = BodyFields.part(part, Measure.DIAMETER);
                problems.warn(there.at(), there.shown(), "over a tenth off what its size says", "measure it again");
            }
        }
    }

    private double value(Measure measure) {
        return measures.get(measure).orElseThrow();
    }

    private void error(Measure measure, String message, String advice) {
        Found there = BodyFields.part(part, measure);
        problems.error(there.at(), there.shown(), message, advice);
    }
}
