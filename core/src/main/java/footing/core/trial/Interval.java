package footing.core.trial;

/** A range of values, both ends included. */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("no interval from " + low + " to " + high);
        }
    }

    public boolean contains(double x) {
        return x >= low && x <= high;
    }
}
