package footing.core.answer;

import footing.core.chance.Sample;

/** A figure over the futures: mean, standard error of the mean, 10th, 50th and 90th percentile. */
public record Estimate(double mean, double standardError, double p10, double p50, double p90) {
    static Estimate of(double[] values) {
        Sample sample = new Sample(values);
        double[] p = sample.percentiles(0.1, 0.5, 0.9);
        return new Estimate(sample.mean(), sample.standardError(), p[0], p[1], p[2]);
    }
}
