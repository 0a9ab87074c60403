package footing.core.records;

/**
 * What was seen of one set's life.
 *
 * @param entry its hours when it came under observation: 0 for a set seen new, more for one already worn when
 *     recording began (left truncation; to forget it makes lives look too long, since short ones were never seen)
 * @param exit its hours when it was last seen
 * @param wornOut true if it was worn out then; false if it still ran or left for another reason (right censoring)
 */
public record Life(double entry, double exit, boolean wornOut) {
    public Life {
        if (!(entry >= 0 && exit > entry && exit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a set seen from " + entry + " to " + exit + " hours of its life"
                    + "\nThe second must be above the first, neither below 0.");
        }
    }
}
