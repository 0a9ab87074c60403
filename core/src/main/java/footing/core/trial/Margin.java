package footing.core.trial;

/**
 * The difference below which two things count as alike, stated before the runs are made.
 *
 * @param size in the unit of the runs, or as a share of the mean of the two things
 * @param share true if it is such a share
 */
public record Margin(double size, boolean share) {
    /** Where nobody stated one: ten percent of the mean. */
    public static final Margin USUAL = new Margin(0.10, true);

    public Margin {
        if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a margin is above zero, not " + size);
        }
        if (share && !(size < 1)) {
            throw new IllegalArgumentException("a margin is less than the whole, not " + size);
        }
    }

    /** The margin where the mean of the two things is known. */
    public double at(double mean) {
        return share ? size * Math.abs(mean) : size;
    }
}
