package footing.core.ground;

/**
 * How wet the turf is, with what a tire finds on it: the friction to reckon with, low, likely and high.
 *
 * <p>Sources: wet grass 0.20 (Noon 1994); dry grass 0.35 to 0.55 (engineering range, from memory); the ranges are
 * engineering defaults around them, and the user's own measured pull comes first.
 */
public enum Wetness {
    DRY(0.35, 0.45, 0.55, 0.4),
    DAMP(0.25, 0.35, 0.45, 0.2),
    WET(0.15, 0.2, 0.3, 0.1);

    private final double low;
    private final double likely;
    private final double high;
    private final double alike;

    Wetness(double low, double likely, double high, double alike) {
        this.low = low;
        this.likely = likely;
        this.high = high;
        this.alike = alike;
    }

    public double low() {
        return low;
    }

    public double likely() {
        return likely;
    }

    public double high() {
        return high;
    }

    /** The difference in pressure below which two wheels are told to mark alike: the firmer the ground, the larger. */
    double alike() {
        return alike;
    }
}
