package footing.core.ground;

import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * A tire's print as measured: paint on the tire, the wheel lowered on paper.
 *
 * @param shape exponent of its outline, 2 for an ellipse, larger toward a rectangle
 * @param load on the wheel
 * @param inflation null for what holds no air
 */
public record Print(
        Length length,
        Length width,
        double shape,
        Mass load,
        @Nullable Pressure inflation) {
    /** What a print's outline is taken for where only its length and width were measured; derived from no test. */
    public static final double USUAL_SHAPE = 3;

    public Print {
        Require.above("the length of a print", 0, length.meters());
        Require.above("the width of a print", 0, width.meters());
        Require.within("the shape of a print", 1, 100, shape);
        Require.above("the load on a print", 0, load.kilograms());
        if (inflation != null) {
            Require.above("the inflation of a print", 0, inflation.pascals());
        }
    }

    public Area area() {
        return new Area(SuperEllipse.area(length.meters(), width.meters(), shape));
    }

    public Pressure mean() {
        return new Pressure(load.newtons() / area().squareMeters());
    }
}
