package footing.core.ground;

import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * One print of an assembly, taken in a trial.
 *
 * @param assembly its id
 * @param load on the wheel; null if it was not noted
 * @param inflation null for what holds no air, or if it was not noted
 */
public record TakenPrint(
        String assembly,
        Outline outline,
        @Nullable Mass load,
        @Nullable Pressure inflation,
        Taken taken) {
    /** What was measured of it. */
    public record Outline(Length length, Length width, Area area) {
        public Outline {
            Require.above("the length of a print", 0, length.meters());
            Require.above("the width of a print", 0, width.meters());
            Require.above("the area of a print", 0, area.squareMeters());
        }
    }

    /**
     * In which trial and when.
     *
     * @param day empty if it was not noted
     */
    public record Taken(String trial, String day) {}

    public TakenPrint {
        if (load != null) {
            Require.above("the load on a print", 0, load.kilograms());
        }
        if (inflation != null) {
            Require.above("the inflation of a print", 0, inflation.pascals());
        }
    }
}
