package footing.core.ground;

/**
 * The pressure under an airless wheel whose tread hangs on a shear layer: p = G·h/R, nearly whatever the load, so that
 * the print grows longer with load: l = W/(p·b).
 *
 * <p>A check on a print, no prediction: G and h are the maker's. Holds until the print is long against R. Source: T. B.
 * Rhyne, S. M. Cron, <i>Tire Science and Technology</i> 34(3), 2006, 150–169 (abstract read; the equation from memory).
 */
public final class ShearBand {
    private ShearBand() {}

    /** Pa, from the layer's shear modulus (Pa), its thickness and the radius of its outer membrane (m). */
    public static double pressure(double modulus, double thickness, double radius) {
        Require.above("a modulus", 0, modulus);
        Require.above("a thickness", 0, thickness);
        Require.above("a radius", thickness, radius);
        return modulus * thickness / radius;
    }

    /** Length of the print in m, from the load (N), its pressure (Pa) and width (m). */
    public static double printLength(double load, double pressure, double width) {
        Require.above("a load", 0, load);
        Require.above("a pressure", 0, pressure);
        Require.above("a width", 0, width);
        return load / (pressure * width);
    }
}
