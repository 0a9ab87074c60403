package footing.core.future;

import footing.core.fleet.ResolvedMachine;

/**
 * What each entry of a machine has cost by some hours of its life, future by future, as present values after tax: its
 * purchase at hour 0, then everything spent up to the hour; the trade after the last.
 *
 * <p>A pass of its own: every future runs alone through the same simulation, whose sums over one future are that
 * future, so an answer that doesn't ask for this pays nothing for it.
 */
public final class CostSoFar {
    /** Equal steps from hour 0 to the trade. */
    public static final int STEPS = 50;

    private static final int SKIP = MachinePlan.GRID / STEPS;

    private final MachinePlan plan;
    private final double keep;
    private final double[] presentHours = new double[STEPS + 1];
    private final double[][][] costs;

    private CostSoFar(MachinePlan plan, int futures) {
        this.plan = plan;
        keep = 1 - plan.machine.terms().taxRate();
        for (int s = 1; s <= STEPS; s++) {
            presentHours[s] = plan.discounting.presentHours(plan.calendar.place(hour(s, plan.machine.hoursLeft())));
        }
        costs = new double[plan.entries.size()][STEPS + 2][futures];
    }

    /**
     * Runs a machine's first futures.
     *
     * @param futures at least 1; the same as those of an answer with this seed
     */
    public static CostSoFar of(ResolvedMachine machine, long seed, int futures) {
        if (!(futures >= 1)) {
            throw new IllegalArgumentException("at least one future is needed, not " + futures);
        }
        MachineFutures run = new MachineFutures(machine, seed);
        CostSoFar soFar = new CostSoFar(run.plan(), futures);
        run.reserve(futures);
        for (int f = 0; f < futures; f++) {
            Block alone = run.alone(f);
            for (int e = 0; e < soFar.costs.length; e++) {
                soFar.add(e, f, alone);
            }
        }
        return soFar;
    }

    /** The hour of a step, from now. */
    public static double hour(int step, double hoursLeft) {
        return step == STEPS ? hoursLeft : hoursLeft * step / STEPS;
    }

    /**
     * The cost of an entry by a step in each future; the caller must not change it.
     *
     * @param step 0 to {@value #STEPS}, the trade left out
     */
    public double[] by(int entry, int step) {
        if (!(step >= 0 && step <= STEPS)) {
            throw new IllegalArgumentException("no step " + step);
        }
        return costs[entry][step];
    }

    /** The cost of an entry after the trade in each future, which is all of it; the caller must not change it. */
    public double[] afterTrade(int entry) {
        return costs[entry][STEPS + 1];
    }

    private void add(int e, int future, Block alone) {
        CourseSums drive = alone.courses.get(plan.driveCourse[e]);
        CourseSums caster = alone.courses.get(plan.casterCourse[e]);
        double purchase = plan.purchases[e].presentValue();
        double perHour = plan.upkeepPerHour(e);
        double lumps = 0;
        double cost = purchase;
        int g = 0;
        for (int s = 0; s <= STEPS; s++) {
            for (; g <= s * SKIP; g++) {
                lumps += drive.lumps[g] + caster.lumps[g];
                perHour += drive.upkeepChange[g] + caster.upkeepChange[g];
            }
            cost = purchase + keep * (lumps + perHour * presentHours[s]);
            costs[e][s][future] = cost;
        }
        double trade = drive.totals[Measure.TRADE] + caster.totals[Measure.TRADE];
        costs[e][STEPS + 1][future] = cost - keep * trade * plan.presentAtTrade - plan.reliefAtTrade[e];
    }
}
