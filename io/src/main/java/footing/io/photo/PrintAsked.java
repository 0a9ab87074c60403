package footing.io.photo;

import java.util.List;

/**
 * What to measure on a photo of a print.
 *
 * @param card the sheet or card of known size
 * @param rolling along which side of the card the tire rolled
 * @param corners of the card, in any order, by hand; empty to have them found
 * @param border of the print, in order, by hand; empty to have it found
 */
public record PrintAsked(Card card, Rolling rolling, List<Spot> corners, List<Spot> border) {
    private static final int FEWEST_BORDER = 12;

    /** The direction of rolling on the card. */
    public enum Rolling {
        LONG_SIDE,
        SHORT_SIDE
    }

    public PrintAsked {
        corners = List.copyOf(corners);
        border = List.copyOf(border);
        if (!corners.isEmpty() && Quad.of(corners) == null) {
            throw new IllegalArgumentException("a card has four corners of a convex figure");
        }
        if (!border.isEmpty() && border.size() < FEWEST_BORDER) {
            throw new IllegalArgumentException("a border by hand has at least " + FEWEST_BORDER + " points");
        }
    }

    /** With everything found in the picture, the tire rolling along the card's short side. */
    public static PrintAsked of(Card card) {
        return new PrintAsked(card, Rolling.SHORT_SIDE, List.of(), List.of());
    }

    /** True for points that {@link #corners} may hold. */
    public static boolean areCorners(List<Spot> any) {
        return Quad.of(any) != null;
    }
}
