package footing.io.photo;

/** A point, in pixels of a picture or in meters on the sheet. */
public record Spot(double x, double y) {
    public Spot {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY && Math.abs(y) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no point at " + x + ", " + y);
        }
    }

    double to(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** Twice the area of the triangle to two others; positive if they turn left. */
    double turn(Spot b, Spot c) {
        return (b.x - x) * (c.y - y) - (b.y - y) * (c.x - x);
    }
}
