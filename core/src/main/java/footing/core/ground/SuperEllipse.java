package footing.core.ground;

import org.hipparchus.special.Gamma;

/**
 * The outline of a print on firm ground, |2x/l|ⁿ + |2y/w|ⁿ = 1: an ellipse for n = 2, nearly a rectangle for large n.
 * Its area is A = c(n)·l·w with c(n) = Γ(1 + 1/n)² / Γ(1 + 2/n); 0.785 for an ellipse, 1 for a rectangle.
 *
 * <p>Sources: the area is derived. That super-ellipses match tire prints best of the outlines compared (81 % with
 * measured axes): Marusiak et al., <i>Journal of Forest Science</i> 70(3), 2024, 144–159.
 */
public final class SuperEllipse {
    private static final int HALVINGS = 60;

    private SuperEllipse() {}

    /**
     * c(n), the share of the rectangle around it.
     *
     * @param shape exponent n, at least 1
     */
    public static double fullness(double shape) {
        Require.within("the shape of a print", 1, Double.MAX_VALUE, shape);
        return Math.exp(2 * Gamma.logGamma(1 + 1 / shape) - Gamma.logGamma(1 + 2 / shape));
    }

    /** Its area in m², from length and width in m. */
    public static double area(double length, double width, double shape) {
        Require.above("the length of a print", 0, length);
        Require.above("the width of a print", 0, width);
        return fullness(shape) * length * width;
    }

    /**
     * The exponent n at which c(n) is this share, by bisection.
     *
     * @param fullness area over that of the rectangle around it; taken for the nearest exponent from 1 to 20 beyond
     */
    public static double shapeOf(double fullness) {
        Require.within("the fullness of a print", 0, 1, fullness);
        double low = PrintOutline.LEAST_SHAPE;
        double high = PrintOutline.MOST_SHAPE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (fullness(middle) < fullness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
