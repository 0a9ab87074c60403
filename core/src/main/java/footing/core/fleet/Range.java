package footing.core.fleet;

/** The values a key takes: from least (left out if {@code open}) to most, whole numbers only if {@code whole}. */
public record Range(double least, double most, boolean open, boolean whole) {
    public Range {
        if (!(least < most)) {
            throw new IllegalArgumentException("empty range: " + least + " to " + most);
        }
    }

    static Range of(double least, double most) {
        return new Range(least, most, false, false);
    }

    static Range above(double least, double most) {
        return new Range(least, most, true, false);
    }

    static Range whole(double least, double most) {
        return new Range(least, most, false, true);
    }

    public boolean contains(double x) {
        return (open ? x > least : x >= least) && x <= most && !(whole && x != Math.rint(x));
    }

    /** The nearest value inside; just above an open end. */
    public double clamp(double x) {
        double floor = open ? Math.nextUp(least) : least;
        return Math.min(Math.max(x, floor), most);
    }
}
