package footing.core.records;

/** Between what and what a quantity lies with the share asked for; {@code high} is infinite if nothing bounds it. */
public record Limits(double low, double high) {
    /** The share every result is given with: one in ten below, one in ten above. */
    public static final double SHARE = 0.8;

    public Limits {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits out of order: " + low + ", " + high);
        }
    }

    /** In order whatever order they come in, as limits found by dividing by a negative slope. */
    static Limits sorted(double a, double b) {
        return new Limits(Math.min(a, b), Math.max(a, b));
    }

    static double checked(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("the share within limits is " + share + ", must lie between 0 and 1");
        }
        return share;
    }

    public boolean contains(double x) {
        return x >= low && x <= high;
    }
}
