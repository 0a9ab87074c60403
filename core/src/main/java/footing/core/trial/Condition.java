package footing.core.trial;

/**
 * What may differ between runs besides the two things compared. A measured condition has a tolerance: a difference of
 * the means of the two sides below it is taken for equal (common practice, no source).
 */
public enum Condition {
    /** In pascals; half a psi. */
    PRESSURE(3447, false),
    /** Share of water in the soil; three percent points. */
    MOISTURE(0.03, false),
    /** In meters per second; a twentieth. */
    SPEED(0.05, true),
    /** In kilograms; a fiftieth. */
    MASS(0.02, true),
    /** Depth of tread, in meters; one millimeter. */
    TREAD(0.001, false),
    OPERATOR,
    MACHINE,
    DIRECTION,
    DAY;

    private final double tolerance;
    private final boolean relative;

    Condition() {
        this(0, false);
    }

    Condition(double tolerance, boolean relative) {
        this.tolerance = tolerance;
        this.relative = relative;
    }

    /** True for a measured condition, false for one told by a name. */
    public boolean isMeasured() {
        return tolerance > 0;
    }

    /** True if two means of this condition differ by more than its tolerance. */
    boolean differs(double a, double b) {
        return Math.abs(a - b) > (relative ? tolerance * Math.max(Math.abs(a), Math.abs(b)) : tolerance);
    }
}
