package footing.core.ground;

/**
 * What of a ground pressure is left at a depth, under the middle of an even round patch of the same area:
 * σ = p·(1 − cos^ν α), cos α = z/√(z² + R²), R = √(A/π).
 *
 * <p>The concentration factor ν is 3 in an elastic body; here larger means <b>softer</b> ground, in which the stress
 * keeps together under the wheel: 4 dry and hard, 5 moist, 6 wet and soft. A comparison between wheels, no threshold of
 * harm. Sources: Froehlich 1934, Soehne 1953 (both from memory).
 */
public final class DepthStress {
    public static final double HARD = 4;
    public static final double MOIST = 5;
    public static final double SOFT = 6;

    private DepthStress() {}

    /** Pa, from the mean pressure (Pa), the area (m²) and the depth (m). */
    public static double below(double pressure, double area, double depth, double concentration) {
        Require.above("an area", 0, area);
        Require.within("a depth", 0, Double.MAX_VALUE, depth);
        Require.within("a concentration factor", 3, 10, concentration);
        double radius = Math.sqrt(area / Math.PI);
        double cosine = depth / Math.hypot(depth, radius);
        return pressure * (1 - Math.pow(cosine, concentration));
    }
}
