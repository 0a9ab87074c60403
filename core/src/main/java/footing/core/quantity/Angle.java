package footing.core.quantity;

/** An angle in radians. */
public record Angle(double radians) implements Comparable<Angle> {
    public Angle {
        Finite.check("angle", radians);
    }

    public static Angle ofDegrees(double x) {
        return new Angle(Math.toRadians(x));
    }

    /** The angle of this slope: rise over run. */
    public static Angle ofSlope(double tangent) {
        return new Angle(Math.atan(tangent));
    }

    public double degrees() {
        return Math.toDegrees(radians);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }
}
