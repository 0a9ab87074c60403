package footing.core.fitting;

import footing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
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
        HEIGHT
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
