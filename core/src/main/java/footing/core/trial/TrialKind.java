package footing.core.trial;

/**
 * What a trial measures. The usual spread is the standard deviation of one run as a share of the mean, where nothing
 * better is known; common practice, no source.
 */
public enum TrialKind {
    /** Drawbar pull against a load cell, or opposed pulls that give a winner. */
    PULL(Goal.MORE, 0.10),
    /** Downhill drift over a distance, or the angle at the first slip, which is better when it is more. */
    SIDE_HILL(Goal.LESS, 0.20),
    /** Turf torn by a pivot turn, as a share of the ring the wheel swept. */
    PIVOT(Goal.LESS, 0.30),
    /** Area of the contact patch. */
    PRINT(Goal.NEITHER, 0.05),
    /** Weighted acceleration at the operator's place. */
    RIDE(Goal.LESS, 0.10),
    /** Distance from full speed to rest. */
    STOP(Goal.LESS, 0.10),
    /** Height of the cut or of the deck. */
    HEIGHT(Goal.NEITHER, 0.10),
    /** Blades left standing in a frame. */
    CUT(Goal.LESS, 0.25),
    /** Ground speed. */
    SPEED(Goal.MORE, 0.06);

    private final Goal goal;
    private final double usualSpread;

    TrialKind(Goal goal, double usualSpread) {
        this.goal = goal;
        this.usualSpread = usualSpread;
    }

    public Goal goal() {
        return goal;
    }

    public double usualSpread() {
        return usualSpread;
    }
}
