package footing.core.ground;

import footing.core.quantity.Pressure;

/**
 * Which of two wheels marks a lawn more, by mean ground pressure and how wet it is. A ranking, never a promise: how
 * sharply it turns, how often it passes and how wet the ground is decide more than the tire.
 *
 * <p>Sources: that ruts go with footprint pressure against the strength of the ground, and deepen with every pass: Jones
 * and Arp 2017 (read). The differences told 'alike' are our own, no source: dry 40 %, damp 20 %, wet 10 %.
 */
public enum Marking {
    LESS,
    ALIKE,
    MORE;

    /** How the other wheel marks against the first one. */
    public static Marking of(Pressure first, Pressure other, Wetness wetness) {
        Require.above("a ground pressure", 0, first.pascals());
        Require.above("a ground pressure", 0, other.pascals());
        double ratio = other.pascals() / first.pascals();
        if (ratio > 1 + wetness.alike()) {
            return MORE;
        }
        return ratio < 1 / (1 + wetness.alike()) ? LESS : ALIKE;
    }
}
