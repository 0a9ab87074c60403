package footing.io.words;

import footing.core.trial.TrialKind;
import java.util.ArrayList;
import java.util.List;

/** The usual cautions of a trial. They stand on the run sheet and beside every result; common practice, no source. */
public final class TrialCautions {
    private static final String MANUAL =
            "The operator's manual, local rules and your employer's come before anything here.";
    private static final String STRAP =
            "Straps, shackles and anchors rated well above the pull, a damper over the strap,"
                    + " a low and level hitch. Nobody in line with the strap, nor nearer than its length.";
    private static final String SLOPE = "Only on slopes the operator's manual allows for this machine as it is loaded,"
            + " dry, with a spotter, roll bar up and belt on; stay two machine widths from water, walls and drop-offs."
            + " Stop at the first slide. No result here calls a slope safe.";
    private static final String COURSE = "A clear, level course with room to stop; nobody on it.";
    private static final String LIFT = "Lift at the manual's points on firm, level ground: chocks, stands, key out."
            + " Nobody under what only a jack holds.";
    private static final String BLADES = "Key out and the plug wire off before a hand goes near a blade; gloves.";
    private static final String TURN = "Level ground and nobody within the turn.";

    private TrialCautions() {}

    public static List<String> of(TrialKind kind) {
        List<String> cautions = new ArrayList<>();
        switch (kind) {
            case PULL -> cautions.addAll(List.of(STRAP, SLOPE));
            case SIDE_HILL -> cautions.add(SLOPE);
            case PIVOT -> cautions.add(TURN);
            case PRINT -> cautions.add(LIFT);
            case RIDE, STOP, SPEED -> cautions.add(COURSE);
            case HEIGHT, CUT -> cautions.add(BLADES);
        }
        cautions.add(MANUAL);
        return List.copyOf(cautions);
    }
}
