package footing.core.records;

import java.util.stream.DoubleStream;

/** Values in order, to be counted without looking at each. */
final class Sorted {
    private final double[] values;

    Sorted(DoubleStream values) {
        this.values = values.sorted().toArray();
    }

    /** How many are less than x. */
    int below(double x) {
        int low = 0;
        int high = values.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (values[middle] < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    int notAbove(double x) {
        return below(Math.nextUp(x));
    }
}
