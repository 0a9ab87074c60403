package footing.core.ground;

import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * The contact of a wheel with firm ground.
 *
 * @param length null if neither a print nor the tire's width is known
 * @param width null with it
 * @param shape exponent of its outline, see {@link SuperEllipse}
 * @param mean load over area
 * @param low what the mean may be at the least, where it rests on no print
 * @param high and at the most
 */
public record Patch(
        Area area,
        @Nullable Length length,
        @Nullable Length width,
        double shape,
        Pressure mean,
        Pressure low,
        Pressure high,
        Basis basis) {

    /** What a patch rests on. */
    public enum Basis {
        /** A print, at this load and pressure. */
        PRINT,
        /** A print, carried over to this load and pressure. */
        CARRIED_OVER,
        /** No print: what tires of this sort usually do. */
        PRIOR
    }
}
