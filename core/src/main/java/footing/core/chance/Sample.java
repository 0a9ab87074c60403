package footing.core.chance;

/** A sample of equally likely values. */
public final class Sample {
    private final double[] values;
    private final double mean;

    /**
     * @param values at least one; not copied, not changed
     */
    public Sample(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("an empty sample");
        }
        this.values = values;
        double sum = 0;
        for (double x : values) {
            sum += x;
        }
        mean = sum / values.length;
    }

    public double mean() {
        return mean;
    }

    /** Standard error of the mean, s/√n with s of n − 1; 0 for a single value. */
    public double standardError() {
        int n = values.length;
        double squares = 0;
        for (double x : values) {
            squares += (x - mean) * (x - mean);
        }
        return n < 2 ? 0 : Math.sqrt(squares / (n - 1.0) / n);
    }

    /**
     * Percentiles by linear interpolation between order statistics, h = (n − 1)p.
     *
     * <p>Source: R. J. Hyndman, Y. Fan, "Sample Quantiles in Statistical Packages", American Statistician 50(4), 1996,
     * definition 7. Order statistics by C. A. R. Hoare's selection, "Algorithm 65: Find", CACM 4(7), 1961, which beats
     * a sort by far for three of them.
     *
     * @param shares in increasing order, each in (0, 1)
     */
    public double[] percentiles(double... shares) {
        double[] work = values.clone();
        double[] found = new double[shares.length];
        int settled = 0;
        for (int i = 0; i < shares.length; i++) {
            double h = (work.length - 1) * shares[i];
            int below = (int) h;
            select(work, settled, below);
            settled = below;
            double next = work[below];
            if (below + 1 < work.length) {
                next = least(work, below + 1);
            }
            found[i] = work[below] + (h - below) * (next - work[below]);
        }
        return found;
    }

    private static double least(double[] work, int from) {
        double least = work[from];
        for (int i = from + 1; i < work.length; i++) {
            least = Math.min(least, work[i]);
        }
        return least;
    }

    /** Reorders so that what stands at k is what a sort would put there, no less before it and no more after. */
    private static void select(double[] work, int from, int k) {
        int low = from;
        int high = work.length - 1;
        while (low < high) {
            double pivot = middle(work[low], work[(low + high) >>> 1], work[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (work[i] < pivot) {
                    i++;
                }
                while (work[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swapped = work[i];
                    work[i++] = work[j];
                    work[j--] = swapped;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return;
            }
        }
    }

    private static double middle(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }

    /** The share of values greater than 0. */
    public static double shareAboveZero(double[] values) {
        int above = 0;
        for (double x : values) {
            above += x > 0 ? 1 : 0;
        }
        return (double) above / values.length;
    }
}
