package footing.core.fleet;

import footing.core.chance.Bounds;

/** What a number of a case counts, which fixes the units it may be written in. Times are kept in hours. */
public enum Dimension {
    /** In the case's currency; a bare number. */
    MONEY,
    /** A count; a bare number. */
    COUNT,
    /** Operating hours; a bare number is hours. */
    METER_HOURS,
    /** A time; needs its unit. */
    TIME,
    /** A fraction, written with the percent sign. */
    SHARE;

    /** The bounds a three-point of this dimension is built on. */
    public Bounds bounds() {
        return this == SHARE ? Bounds.SHARE : Bounds.POSITIVE;
    }
}
