package footing.core.money;

/**
 * How the cost of bought property is deducted over the tax years: first what is expensed, then a special allowance on the
 * rest, then the table on what remains.
 *
 * <p>Limits and allowance rates change by law from year to year, so they are inputs. Confirm them, the class of the
 * property and the state's rules with a tax adviser. Source: IRS Publication 946, chapters 2 to 4.
 */
public final class CostRecovery {

    private CostRecovery() {}

    /**
     * The most that may be expensed in the year of purchase: max(0, limit - max(0, placed - threshold)), and no more than
     * the cost or the business income. What the income holds back is carried to the next year.
     *
     * @param limit dollar limit of the tax year
     * @param threshold amount placed in service above which the limit falls dollar by dollar
     */
    public record ExpensingLimit(double limit, double threshold) {

        public ExpensingLimit {
            Inputs.notNegative("limit", limit);
            Inputs.notNegative("threshold", threshold);
        }

        /**
         * The limit after its reduction.
         *
         * @param placedInService qualifying cost of everything placed in service in the year
         * @return the reduced limit, 0 at least
         */
        public double reduced(double placedInService) {
            double excess = Math.max(0, Inputs.notNegative("placedInService", placedInService) - threshold);
            return Math.max(0, limit - excess);
        }

        /**
         * What may be deducted this year.
         *
         * @param placedInService qualifying cost (cash paid, without the basis of a trade-in)
         * @param businessIncome taxable income of the business before this deduction
         * @return the deduction
         */
        public double deductible(double placedInService, double businessIncome) {
            double elected = Math.min(placedInService, reduced(placedInService));
            return Math.min(elected, Math.max(0, Inputs.finite("businessIncome", businessIncome)));
        }

        /**
         * What is carried to the next year.
         *
         * @param placedInService qualifying cost
         * @param businessIncome taxable income of the business before this deduction
         * @return elected amount less what could be deducted
         */
        public double carriedForward(double placedInService, double businessIncome) {
            double elected = Math.min(placedInService, reduced(placedInService));
            return elected - deductible(placedInService, businessIncome);
        }
    }

    /**
     * Deductions by tax year, the first being the year of purchase. Over the cost they are the shares of a tax schedule.
     *
     * @param cost of the property, at least 0
     * @param expensed amount expensed at once, 0 to cost
     * @param allowance special allowance as a share of the rest, 0 to 1
     * @param table percentages for what remains
     * @return one amount per year, adding up to the cost
     */
    public static double[] deductions(double cost, double expensed, double allowance, RecoveryTable table) {
        double rest = Inputs.notNegative(
                "cost less expensed amount",
                Inputs.notNegative("cost", cost) - Inputs.notNegative("expensed", expensed));
        double special = rest * Inputs.share("allowance", allowance);
        double[] deductions = new double[table.shares().size()];
        for (int year = 1; year <= deductions.length; year++) {
            deductions[year - 1] = table.deduction(rest - special, year);
        }
        deductions[0] += expensed + special;
        return deductions;
    }
}
