package footing.core.future;

import java.util.Arrays;

/**
 * What a course came to, summed over futures: {@link Measure} totals, nominal sums by part and year, and the present
 * values by step of the grid over the hours left. Before tax; the trade in today's money.
 */
final class CourseSums {
    final double[] totals = new double[Measure.COUNT];
    /** Nominal sums of the five running parts, year by year of each part. */
    final double[] yearly;
    /** Present value of what falls within each step of the grid, upkeep left out. */
    final double[] lumps = new double[MachinePlan.GRID + 1];
    /** Change of the upkeep per hour within each step. */
    final double[] upkeepChange = new double[MachinePlan.GRID + 1];

    CourseSums(int years) {
        yearly = new double[Measure.RUNNING_PARTS * years];
    }

    void clear() {
        Arrays.fill(totals, 0);
        Arrays.fill(yearly, 0);
        Arrays.fill(lumps, 0);
        Arrays.fill(upkeepChange, 0);
    }

    void add(CourseSums later) {
        add(totals, later.totals);
        add(yearly, later.yearly);
        add(lumps, later.lumps);
        add(upkeepChange, later.upkeepChange);
    }

    private static void add(double[] sum, double[] more) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }
}
