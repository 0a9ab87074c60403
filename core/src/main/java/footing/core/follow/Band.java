package footing.core.follow;

import footing.core.chance.Sample;

/** What is due by some hour: one future in ten has less than {@code low}, one in ten more than {@code high}. */
public record Band(double low, double mean, double high) {
    public Band {
        if (!(low >= 0 && low <= high && mean >= 0 && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a band from " + low + " to " + high + " about " + mean);
        }
    }

    static Band of(double[] futures) {
        Sample sample = new Sample(futures);
        double[] at = sample.percentiles(0.1, 0.9);
        return new Band(at[0], sample.mean(), at[1]);
    }
}
