package footing.core.chance;

import java.util.Arrays;

/**
 * Order statistics of a sample without sorting all of it: values are counted into bins of equal width from the least to
 * the greatest, and only the bins that hold a wanted rank are put in order. Whatever the rounding, a greater value is
 * never in an earlier bin.
 *
 * <p>Source: distribution counting, D. E. Knuth, "The Art of Computer Programming", volume 3, 5.2 (from memory).
 */
final class Ranks {
    private static final int BINS = 2048;

    private final double[] values;
    private final double least;
    private final double binsPerUnit;
    /** By bin, the values in all bins before it. */
    private final int[] before = new int[BINS + 1];

    /** @param values at least one; not copied, not changed */
    Ranks(double[] values) {
        this.values = values;
        double low = values[0];
        double high = values[0];
        for (double x : values) {
            low = x < low ? x : low;
            high = x > high ? x : high;
        }
        least = low;
        binsPerUnit = BINS / (high - low);
        for (double x : values) {
            before[bin(x) + 1]++;
        }
        for (int bin = 0; bin < BINS; bin++) {
            before[bin + 1] += before[bin];
        }
    }

    private int bin(double x) {
        return Math.min((int) ((x - least) * binsPerUnit), BINS - 1);
    }

    /** The bin that holds a rank: the last one that begins at it or before it. */
    private int binOf(int rank) {
        int low = 0;
        int high = BINS - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (before[middle] <= rank) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** @param ranks each from 0, the least value, to one less than their number */
    double[] at(int... ranks) {
        boolean[] wanted = new boolean[BINS];
        for (int rank : ranks) {
            wanted[binOf(rank)] = true;
        }
        int[] from = new int[BINS];
        int size = 0;
        for (int bin = 0; bin < BINS; bin++) {
            from[bin] = size;
            size += wanted[bin] ? before[bin + 1] - before[bin] : 0;
        }
        double[] some = new double[size];
        int filled = 0;
        for (double x : values) {
            if (wanted[bin(x)]) {
                some[filled++] = x;
            }
        }
        Arrays.sort(some);
        double[] found = new double[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            int bin = binOf(ranks[i]);
            found[i] = some[from[bin] + ranks[i] - before[bin]];
        }
        return found;
    }
}
