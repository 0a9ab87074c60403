package footing.io.photo;

/** A place in a picture as it is looked at, upright: pixels from its upper left corner, right and down. */
public record Spot(double x, double y) {
    private static final double FAR = 1e6;

    public Spot {
        if (!(Math.abs(x) <= FAR && Math.abs(y) <= FAR)) {
            throw new IllegalArgumentException("a place in a picture is not at " + x + ", " + y);
        }
    }

    double to(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    Spot times(double factor) {
        return new Spot(x * factor, y * factor);
    }
}
