package footing.core.trial;

/**
 * How many pairs a question needs.
 *
 * @param toFind a difference as large as the margin, four times in five
 * @param toCallAlike two things that don't differ, four times in five
 */
public record PlanAdvice(int toFind, int toCallAlike) {
    private static final int FEWEST = 5;

    /**
     * From a guess of the spread.
     *
     * @param margin as a share of the mean
     * @param spread of one run, as a share of the mean
     */
    public static PlanAdvice fromRuns(double margin, double spread) {
        return fromPairs(margin, Math.sqrt(2) * spread);
    }

    /** From the spread of the differences of pairs, in the unit of the margin. */
    public static PlanAdvice fromPairs(double margin, double spread) {
        if (!(margin > 0 && spread > 0)) {
            throw new IllegalArgumentException("margin and spread are above zero");
        }
        double effect = margin / spread;
        int find = (int) Math.ceil(Power.pairsForDifference(effect, Power.USUAL, Power.ALPHA));
        return new PlanAdvice(find, Power.pairsForAlike(effect, Power.USUAL, Power.ALPHA));
    }

    /** Enough for either answer, and never fewer than five. */
    public int pairs() {
        return Math.max(FEWEST, Math.max(toFind, toCallAlike));
    }
}
