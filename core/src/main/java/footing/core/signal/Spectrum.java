package footing.core.signal;

import java.util.Arrays;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/** Weights a signal by its spectrum. */
final class Spectrum {
    /** Seconds of mirrored signal before and after, so that a filter meets no jump where a log begins and ends. */
    private static final double MIRROR = 8;

    private Spectrum() {}

    static double[] weighted(double[] x, double rate, Weighting weighting) {
        int n = x.length;
        int mirror = (int) Math.min(n - 1L, Math.round(MIRROR * rate));
        int size = Integer.highestOneBit(2 * (n + 2 * mirror) - 1);
        double mean = Arrays.stream(x).average().orElse(0);
        double[][] z = new double[2][size];
        for (int i = -mirror; i < n + mirror; i++) {
            z[0][i + mirror] = x[mirrored(i, n)] - mean;
        }
        FastFourierTransformer.transformInPlace(z, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int k = 0; k <= size / 2; k++) {
            Complex h = weighting.at(k * rate / size);
            multiply(z, k, h);
            if (k > 0 && k < size / 2) {
                multiply(z, size - k, h.conjugate());
            }
        }
        FastFourierTransformer.transformInPlace(z, DftNormalization.STANDARD, TransformType.INVERSE);
        return Arrays.copyOfRange(z[0], mirror, mirror + n);
    }

    private static void multiply(double[][] z, int k, Complex h) {
        double re = z[0][k] * h.getReal() - z[1][k] * h.getImaginary();
        z[1][k] = z[0][k] * h.getImaginary() + z[1][k] * h.getReal();
        z[0][k] = re;
    }

    private static int mirrored(int i, int n) {
        int j = Math.abs(i);
        return j < n ? j : 2 * (n - 1) - j;
    }
}
