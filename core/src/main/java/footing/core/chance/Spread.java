package footing.core.chance;

/** What somebody states of a quantity: one value, or a three-point distribution. */
public sealed interface Spread permits Fixed, Metalog {
    /** The median. */
    double likely();

    /** The mean of the draws. */
    double mean();

    /** The value drawn by a uniform y in (0, 1), clipped to {@value Metalog#LEAST_Y}–{@value Metalog#MOST_Y}. */
    double draw(double y);

    /** The share of the distribution below x (for a fixed value: 0 before it, 1 from it on). */
    double cumulative(double x);

    /** Every value multiplied by a factor ≥ 0. A share can only be fixed at a new value, not scaled. */
    Spread times(double factor);

    /** True if every draw is the same. */
    default boolean isFixed() {
        return this instanceof Fixed;
    }

    static Spread of(double value) {
        return new Fixed(value);
    }
}
