package footing.core.future;

import footing.core.chance.Spread;
import footing.core.fleet.ResolvedCrew;
import java.util.List;

/** A crew's fixes by column. */
final class FixTable {
    private static final int CELLS = 256;

    final int size;
    final double[] cumulated;
    final Spread[] delay;
    final double[] cost;
    final double[] output;
    final boolean[] replacesTire;
    final boolean[] sealable;
    /** The first fix that a uniform from i/{@value #CELLS} on can pick: where a search for it starts. */
    private final int[] firstFrom = new int[CELLS];

    FixTable(List<ResolvedCrew.ResolvedFix> fixes) {
        size = fixes.size();
        cumulated = new double[Math.max(1, size)];
        delay = new Spread[size];
        cost = new double[size];
        output = new double[size];
        replacesTire = new boolean[size];
        sealable = new boolean[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            ResolvedCrew.ResolvedFix fix = fixes.get(i);
            sum += fix.share();
            cumulated[i] = sum;
            delay[i] = fix.delay();
            cost[i] = fix.cost();
            output[i] = fix.output();
            replacesTire[i] = fix.replacesTire();
            sealable[i] = fix.sealable();
        }
        // Nothing lies beyond the last, whatever the shares add up to.
        cumulated[cumulated.length - 1] = Double.POSITIVE_INFINITY;
        for (int cell = 0; cell < CELLS; cell++) {
            firstFrom[cell] = search(0, (double) cell / CELLS);
        }
    }

    /** The first fix whose cumulated share exceeds u; the last if none does. */
    int pick(double u) {
        return search(firstFrom[(int) (u * CELLS)], u);
    }

    private int search(int from, double u) {
        int fix = from;
        while (!(cumulated[fix] > u)) {
            fix++;
        }
        return fix;
    }
}
