package footing.core.ground;

/**
 * How far a tire gives under load: two bounds between which a real one lies, and the way from one load and pressure to
 * another.
 *
 * <ul>
 *   <li>crowned: an ellipsoid dips δ into the ground, A = π·δ·√(d·b), so δ = W / (π·p·√(d·b));
 *   <li>flat: a square-shouldered tire touches along the chord l = 2·√(d·δ − δ²) over its tread width.
 * </ul>
 *
 * Meters, newtons, pascals. Valid while δ is small against the radius. Sources: derived; the crowned form is that of
 * Grecenko 1995 (from memory, in the survey of Saarilahti 2002), whose 1.57 stands for π/2.
 */
public final class Deflection {
    private Deflection() {}

    /** δ of a round crown; {@code pressure} is the mean one on the ground. */
    public static double crowned(double load, double pressure, double diameter, double width) {
        Require.above("a pressure", 0, pressure);
        return load / crownedStiffness(pressure, diameter, width);
    }

    /** Vertical stiffness of a round crown in N/m: k = π·p·√(d·b). */
    public static double crownedStiffness(double pressure, double diameter, double width) {
        Require.above("a diameter", 0, diameter);
        Require.above("a width", 0, width);
        return Math.PI * pressure * Math.sqrt(diameter * width);
    }

    /** δ of a flat tread whose print is {@code length} long. */
    public static double flat(double length, double diameter) {
        Require.above("a diameter", 0, diameter);
        Require.within("the length of a print", 0, diameter, length);
        double radius = diameter / 2;
        return radius - Math.sqrt(radius * radius - length * length / 4);
    }

    /** A measured δ at another load and mean ground pressure: δ₂ = δ₁·(W₂/W₁)·(p₁/p₂). */
    public static double scaled(double measured, double loadRatio, double pressureRatio) {
        Require.above("a ratio of loads", 0, loadRatio);
        Require.above("a ratio of pressures", 0, pressureRatio);
        return measured * loadRatio / pressureRatio;
    }
}
