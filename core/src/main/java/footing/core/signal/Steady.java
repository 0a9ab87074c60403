package footing.core.signal;

import java.util.Arrays;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * A channel on a steady clock.
 *
 * @param rate in hertz
 */
@SuppressWarnings("ArrayRecordComponent")
record Steady(double[] values, double rate) {
    /** Steps that vary by less than this share of the usual one count as steady. */
    static final double STEADY = 0.02;

    private static final int FEWEST_FOR_SPLINE = 3;

    /** The largest departure of a sample from the steady clock, in steps. */
    static double unsteadiness(Log log) {
        double step = log.seconds() / (log.size() - 1);
        double worst = 0;
        for (int i = 1; i < log.size(); i++) {
            worst = Math.max(worst, Math.abs(log.times()[i] - log.times()[0] - i * step) / step);
        }
        return worst;
    }

    /** A channel as it is if its clock is steady, else along a natural cubic spline. */
    static Steady of(Log log, int channel) {
        int n = log.size();
        double rate = (n - 1) / log.seconds();
        double[] x = log.channels()[channel];
        if (n < FEWEST_FOR_SPLINE || unsteadiness(log) <= STEADY) {
            return new Steady(x.clone(), rate);
        }
        double[] seconds =
                Arrays.stream(log.times()).map(t -> t - log.times()[0]).toArray();
        PolynomialSplineFunction spline = new SplineInterpolator().interpolate(seconds, x);
        double[] values = new double[n];
        Arrays.setAll(values, i -> spline.value(Math.min(i / rate, seconds[n - 1])));
        return new Steady(values, rate);
    }

    /** The weighted values: in the frequency domain, so that no rate is too low for the filter itself. */
    double[] weighted(Weighting weighting) {
        return Spectrum.weighted(values, rate, weighting);
    }
}
