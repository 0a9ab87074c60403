package footing.core.fleet;

/** What a {@link Measure} counts, each kept in its SI unit. */
public enum Physical {
    /** In meters, above zero. */
    LENGTH,
    /** In meters along an axis; may be negative. */
    SHIFT,
    /** In kilograms. */
    MASS,
    /** In pascals. */
    PRESSURE,
    /** In meters per second. */
    SPEED,
    /** In newtons per meter. */
    STIFFNESS,
    /** A bare number. */
    NUMBER,
    /** A fraction. */
    SHARE
}
