package footing.core.answer;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import footing.core.plain.MachineDraft;

/**
 * Futures whose costs are written by hand: what comes out of comparing them is known. Entry 0 is the carried package;
 * entry e has the start cost given for it.
 */
final class PlantedCosts {
    private PlantedCosts() {}

    /** @param costs by entry and future; overwrites the simulated ones, in the array that keeps them */
    static MachineFutures of(double[] startCosts, double[][] costs) {
        MachineDraft draft = new MachineDraft();
        draft.entry("carried", When.NOW, "drive-0", "caster");
        for (int e = 1; e < startCosts.length; e++) {
            draft.entry("entry-" + e, When.NOW, "drive-" + e, "caster");
            draft.assembly("drive-" + e).price = startCosts[e] / 2;
        }
        ResolvedMachine machine = draft.build();
        MachineFutures futures = new MachineFutures(machine, 1).runAll(costs[0].length);
        for (int e = 0; e < costs.length; e++) {
            System.arraycopy(costs[e], 0, futures.costs(e), 0, costs[e].length);
        }
        return futures;
    }

    /** Costs of {@code n} futures with this mean: above it in a share of them, below in the rest. */
    static double[] split(int n, double mean, double shareBelow, double below) {
        double[] costs = new double[n];
        int low = (int) Math.round(n * shareBelow);
        double above = (n * mean - low * (mean - below)) / (n - low);
        for (int f = 0; f < n; f++) {
            costs[f] = f < low ? mean - below : above;
        }
        return costs;
    }

    static double[] steady(int n, double cost) {
        double[] costs = new double[n];
        java.util.Arrays.fill(costs, cost);
        return costs;
    }
}
