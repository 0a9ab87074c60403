package footing.core.fitting;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Blade tip heights as measured after fitting, floor to cutting edge, and whether they reach the targets.
 *
 * <p>Side to side within 1/8 in; rake within 1/16 in of the target or, where none is known, 1/8 to 1/4 in with the front
 * lower; height within 1/8 in of the target. Common practice, no source: the machine's manual rules.
 */
public record Measured(Length rearLeft, Length rearRight, Length frontLeft, Length frontRight) {
    private static final Length EIGHTH = Length.ofInches(1.0 / 8);
    private static final Length SIXTEENTH = Length.ofInches(1.0 / 16);
    private static final Length QUARTER = Length.ofInches(1.0 / 4);

    private static final List<Measure> TIPS = List.of(
            Measure.FITTED_REAR_LEFT, Measure.FITTED_REAR_RIGHT, Measure.FITTED_FRONT_LEFT, Measure.FITTED_FRONT_RIGHT);

    /** A hundredth of a millimeter, so that an eighth measured as an eighth passes. */
    private static final double TAPE = 1e-5;

    public Measured {
        for (Length l : List.of(rearLeft, rearRight, frontLeft, frontRight)) {
            if (!(l.meters() > 0)) {
                throw new IllegalArgumentException("a blade tip stands above the floor, not at " + l.meters() + " m");
            }
        }
    }

    /** What was looked at. */
    public enum What {
        REAR_SIDES,
        FRONT_SIDES,
        RAKE,
        HEIGHT,
        /** What the turns given to the hangers lower the deck by. */
        REAR_HANGERS,
        FRONT_HANGERS
    }

    /** The four tips as they are kept with a case; empty until all were measured. */
    public static Optional<Measured> of(Measures kept) {
        if (!TIPS.stream().allMatch(kept::has)) {
            return Optional.empty();
        }
        List<Length> tips =
                TIPS.stream().map(m -> new Length(kept.get(m).orElseThrow())).toList();
        return Optional.of(new Measured(tips.get(0), tips.get(1), tips.get(2), tips.get(3)));
    }

    /**
     * What a case keeps of a machine after fitting, against the targets: the hanger turns given, within 1/16 in of deck
     * motion of those due, and the blade tips. Nothing where it was measured with another package on.
     */
    public static List<Judgment> kept(Case.Machine machine, SetUp setUp) {
        String on = machine.fitted();
        if (on != null && !on.equals(setUp.change().after().id())) {
            return List.of();
        }
        List<Judgment> all = new ArrayList<>();
        setUp.lowering().value().ifPresent(due -> {
            hanger(What.REAR_HANGERS, machine.measures().get(Measure.TURNED_REAR), due.rear(), setUp, all);
            hanger(What.FRONT_HANGERS, machine.measures().get(Measure.TURNED_FRONT), due.front(), setUp, all);
        });
        of(machine.measures()).ifPresent(m -> all.addAll(m.against(setUp.height(), setUp.rake())));
        return all;
    }

    private static void hanger(What what, OptionalDouble given, double due, SetUp setUp, List<Judgment> all) {
        if (given.isPresent()) {
            Length moved = new Length(setUp.hanger().moved(given.getAsDouble()));
            Length wanted = new Length(due);
            all.add(within(what, moved, wanted.minus(SIXTEENTH), wanted.plus(SIXTEENTH)));
        }
    }

    /**
     * One judgment: a measured value and the values it may take.
     *
     * @param reached false where it has to be set again
     */
    public record Judgment(What what, Length value, Length least, Length most, boolean reached) {}

    /** Rear less front, of the sides' means: above zero the front is lower. */
    public Length rake() {
        return new Length((rearLeft.meters() + rearRight.meters() - frontLeft.meters() - frontRight.meters()) / 2);
    }

    /** The mean of all four. */
    public Length height() {
        return new Length((rearLeft.meters() + rearRight.meters() + frontLeft.meters() + frontRight.meters()) / 4);
    }

    /** Against a target height and rake, either of which may be unknown. */
    public List<Judgment> against(@Nullable Length height, @Nullable Length rake) {
        List<Judgment> all = new ArrayList<>();
        all.add(within(What.REAR_SIDES, rearLeft.minus(rearRight), new Length(-EIGHTH.meters()), EIGHTH));
        all.add(within(What.FRONT_SIDES, frontLeft.minus(frontRight), new Length(-EIGHTH.meters()), EIGHTH));
        all.add(
                rake == null
                        ? within(What.RAKE, rake(), EIGHTH, QUARTER)
                        : within(What.RAKE, rake(), rake.minus(SIXTEENTH), rake.plus(SIXTEENTH)));
        if (height != null) {
            all.add(within(What.HEIGHT, height(), height.minus(EIGHTH), height.plus(EIGHTH)));
        }
        return all;
    }

    private static Judgment within(What what, Length value, Length least, Length most) {
        boolean reached = value.meters() >= least.meters() - TAPE && value.meters() <= most.meters() + TAPE;
        return new Judgment(what, value, least, most, reached);
    }
}
