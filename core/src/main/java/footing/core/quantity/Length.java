package footing.core.quantity;

/** A length or a shift along an axis, in meters; a shift may be negative. */
public record Length(double meters) implements Comparable<Length> {
    public Length {
        Finite.check("length", meters);
    }

    private static final double INCH = 0.0254;

    public static Length ofInches(double x) {
        return new Length(x * INCH);
    }

    public static Length ofMillimeters(double x) {
        return new Length(x / 1000);
    }

    public double inches() {
        return meters / INCH;
    }

    public double millimeters() {
        return meters * 1000;
    }

    public Length plus(Length other) {
        return new Length(meters + other.meters);
    }

    public Length minus(Length other) {
        return new Length(meters - other.meters);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(meters, other.meters);
    }
}
