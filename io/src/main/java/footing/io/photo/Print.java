package footing.io.photo;

import java.util.List;

/**
 * A tire's print as measured on a photograph. Lengths in meters, areas in square meters.
 *
 * @param area inked
 * @param outline inside the hull around the print, gaps between lugs included
 * @param longSide of the smallest rectangle around it; which side is the rolling direction the picture doesn't say
 * @param exponent of the super-ellipse that fills that rectangle alike
 * @param doubts what makes it unsure; empty if nothing does
 */
public record Print(
        double area, double outline, double longSide, double shortSide, double exponent, List<Doubt> doubts) {
    public Print {
        doubts = List.copyOf(doubts);
    }

    /** Why a measurement is unsure. */
    public enum Doubt {
        /** The sheet fills too few pixels. */
        SMALL,
        /** Scale changes too much over the sheet: the camera was held too far from square. */
        TILTED,
        /** Where ink ends depends on the threshold: pale ink, blur or a shadow's edge. */
        SOFT_EDGE,
        /** Ink reaches the rim of the sheet. */
        AT_THE_RIM
    }

    public boolean isSure() {
        return doubts.isEmpty();
    }
}
