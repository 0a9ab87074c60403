package footing.core.quantity;

/** An area in square meters. */
public record Area(double squareMeters) implements Comparable<Area> {
    public Area {
        Finite.check("area", squareMeters);
    }

    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    public double squareInches() {
        return squareMeters / SQUARE_INCH;
    }

    public double squareCentimeters() {
        return squareMeters * 1e4;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMeters, other.squareMeters);
    }
}
