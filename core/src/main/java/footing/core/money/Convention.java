package footing.core.money;

/**
 * When in its first tax year property counts as placed in service. Source: IRS Publication 946 and the instructions to
 * Form 4562.
 */
public enum Convention {
    /** In the middle of the year: the usual rule. */
    HALF_YEAR(0.5),
    /** In the middle of the first quarter; mid-quarter rules apply when over 40 % of the year's basis came in the last. */
    FIRST_QUARTER(0.875),
    /** In the middle of the second quarter. */
    SECOND_QUARTER(0.625),
    /** In the middle of the third quarter. */
    THIRD_QUARTER(0.375),
    /** In the middle of the last quarter. */
    FOURTH_QUARTER(0.125);

    private final double placedFraction;

    Convention(double placedFraction) {
        this.placedFraction = placedFraction;
    }

    /**
     * Part of the first year's depreciation that is allowed.
     *
     * @return 0.5 for the half-year rule, 0.875, 0.625, 0.375 or 0.125 for the quarters
     */
    public double placedFraction() {
        return placedFraction;
    }

    /**
     * Part of a year's depreciation that is allowed in the year of sale.
     *
     * @param quarter of the sale, 1 to 4; the half-year rule doesn't look at it
     * @return 0.5 for the half-year rule, else 0.125, 0.375, 0.625 or 0.875
     */
    public double disposalFraction(int quarter) {
        Inputs.between("quarter", quarter, 1, 4);
        return this == HALF_YEAR ? 0.5 : (2 * quarter - 1) / 8.0;
    }
}
