package footing.core.chance;

import java.util.Arrays;

/** A sample of equally likely values. */
public final class Sample {
    /** A sample is long if finding bounds pays, and so many of its values find them. */
    private static final int SHORT = 2000;

    private static final int SOME = 512;
    /** Standard deviations of a rank among them that the bounds lie away. */
    private static final double DEVIATIONS = 3;
    /** The share of the values there is room for between the bounds: a quarter. */
    private static final int BAND = 4;

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
        mean = sum(values) / values.length;
    }

    /** Four sums side by side: an addition need not wait for the one before it. */
    private static double sum(double[] values) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (; i + 3 < values.length; i += 4) {
            a += values[i];
            b += values[i + 1];
            c += values[i + 2];
            d += values[i + 3];
        }
        for (; i < values.length; i++) {
            a += values[i];
        }
        return a + b + (c + d);
    }

    public double mean() {
        return mean;
    }

    /** The squares of the deviations from the mean, four sums side by side. */
    private double squares() {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (; i + 3 < values.length; i += 4) {
            a += square(values[i] - mean);
            b += square(values[i + 1] - mean);
            c += square(values[i + 2] - mean);
            d += square(values[i + 3] - mean);
        }
        for (; i < values.length; i++) {
            a += square(values[i] - mean);
        }
        return a + b + (c + d);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Standard error of the mean, s/√n with s of n − 1; 0 for a single value. */
    public double standardError() {
        int n = values.length;
        return n < 2 ? 0 : Math.sqrt(squares() / (n - 1.0) / n);
    }

    /**
     * Percentiles by linear interpolation between order statistics, h = (n − 1)p.
     *
     * <p>Source: R. J. Hyndman, Y. Fan, "Sample Quantiles in Statistical Packages", American Statistician 50(4), 1996,
     * definition 7. Of a long sample a few values, sorted, show between which bounds a percentile lies; only what lies
     * between them is put in order (the idea of R. W. Floyd, R. L. Rivest, "Expected Time Bounds for Selection", CACM
     * 18(3), 1975), by C. A. R. Hoare's selection, "Algorithm 65: Find", CACM 4(7), 1961.
     *
     * @param shares each in (0, 1)
     */
    public double[] percentiles(double... shares) {
        double[] some = some();
        double[] band = new double[values.length / BAND];
        double[] found = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            found[i] = percentile(shares[i], some, band);
        }
        return found;
    }

    /** Values from all over the sample, sorted; none if the sample is short. */
    private double[] some() {
        if (values.length < SHORT) {
            return new double[0];
        }
        double[] some = new double[SOME];
        for (int i = 0; i < SOME; i++) {
            some[i] = values[(int) ((long) i * values.length / SOME)];
        }
        Arrays.sort(some);
        return some;
    }

    /** @param band room for the values near the percentile; if they are too many, or it is not among them, all are searched */
    private double percentile(double share, double[] some, double[] band) {
        int n = values.length;
        double h = (n - 1) * share;
        int below = (int) h;
        double away = DEVIATIONS * Math.sqrt(some.length * share * (1 - share)) + 1;
        int first = (int) (share * some.length - away);
        int last = (int) (share * some.length + away);
        double[] work = band;
        int size = 0;
        int under = 0;
        if (first >= 0 && last < some.length) {
            double low = some[first];
            double high = some[last];
            for (double x : values) {
                // The sign bits of the differences, since no processor can guess a comparison here.
                int less = (int) (Double.doubleToRawLongBits(x - low) >>> 63);
                int more = (int) (Double.doubleToRawLongBits(high - x) >>> 63);
                under += less;
                work[Math.min(size, work.length - 1)] = x;
                size += 1 - (less | more);
            }
        }
        if (!(size <= work.length && below >= under && below + 1 < under + size)) {
            work = values.clone();
            size = n;
            under = 0;
        }
        int k = below - under;
        select(work, size, k);
        double next = k + 1 < size ? least(work, k + 1, size) : work[k];
        return work[k] + (h - below) * (next - work[k]);
    }

    private static double least(double[] work, int from, int to) {
        double least = work[from];
        for (int i = from + 1; i < to; i++) {
            least = work[i] < least ? work[i] : least;
        }
        return least;
    }

    /** Reorders so that what stands at k is what a sort would put there, no less before it and no more after. */
    private static void select(double[] work, int size, int k) {
        int low = 0;
        int high = size - 1;
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
