package footing.io.photo;

import footing.core.quantity.Length;

/**
 * Something flat and rectangular of known size in the picture, from which the scale and the tilt are taken.
 *
 * @param width one side
 * @param height the other
 * @param place where it lies
 */
public record Card(Length width, Length height, Place place) {
    private static final double LEAST = 0.02;
    private static final double MOST = 5;

    /** Where the card lies. */
    public enum Place {
        /** It is the sheet that the print is on, or the frame around the turf. */
        UNDER,
        /** It lies beside the print on the same flat ground. */
        BESIDE
    }

    public Card {
        if (!isUsable(width) || !isUsable(height)) {
            throw new IllegalArgumentException(
                    "a sheet, card or frame has sides from 2 cm to 5 m, not " + width + " by " + height);
        }
    }

    /** True for a side from 2 cm to 5 m. */
    public static boolean isUsable(Length side) {
        return side.meters() >= LEAST && side.meters() <= MOST;
    }

    double longer() {
        return Math.max(width.meters(), height.meters());
    }

    double shorter() {
        return Math.min(width.meters(), height.meters());
    }
}
