package footing.io.photo;

import footing.core.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where on the photos of a turn to look for bare soil: in a ring about the frame's middle, inside borders by hand, or
 * else in the frame without the outermost eighth of its shorter side, which its bars and their shadows cover.
 *
 * @param frame by its outer sides
 * @param ring null for none
 * @param before what is pointed at on the photo before the turn
 * @param after and on that after it
 * @param level excess green below which a pixel is soil, {@value #LEAST_LEVEL} to {@value #MOST_LEVEL}, by hand; null
 *     to have it found
 */
public record TurfAsked(
        Card frame,
        @Nullable Ring ring,
        ByHand before,
        ByHand after,
        @Nullable Double level) {
    static final double RIM = 0.125;
    private static final double LEAST_LEVEL = -0.5;
    private static final double MOST_LEVEL = 1;

    /** What the wheel swept about the middle of the frame; the inner radius is 0 for a disc. */
    public record Ring(Length inner, Length outer) {
        public Ring {
            if (!(inner.meters() >= 0 && outer.meters() > inner.meters() && outer.meters() <= 5)) {
                throw new IllegalArgumentException("no ring from " + inner + " to " + outer);
            }
        }
    }

    /**
     * What is pointed at on one photo, in its pixels; what is empty is found or taken as usual.
     *
     * @param corners of the frame, in any order
     * @param border of the ground to be judged, in order
     */
    public record ByHand(List<Spot> corners, List<Spot> border) {
        public static final ByHand NOTHING = new ByHand(List.of(), List.of());

        public ByHand {
            corners = List.copyOf(corners);
            border = List.copyOf(border);
            if (!corners.isEmpty() && !PrintAsked.areCorners(corners)) {
                throw new IllegalArgumentException("a frame has four corners of a convex figure");
            }
            if (!border.isEmpty() && border.size() < 3) {
                throw new IllegalArgumentException("a border by hand has at least three points");
            }
        }
    }

    public TurfAsked {
        boolean byHand = !before.border().isEmpty() || !after.border().isEmpty();
        if (frame.place() == Card.Place.BESIDE && !byHand) {
            throw new IllegalArgumentException("with a card beside it, the ground to be judged is pointed at");
        }
        if (level != null && !isLevel(level)) {
            throw new IllegalArgumentException("no level of green: " + level);
        }
    }

    /** With the level found. */
    public TurfAsked(Card frame, @Nullable Ring ring, ByHand before, ByHand after) {
        this(frame, ring, before, after, null);
    }

    /** True for what {@link #level} may be. */
    public static boolean isLevel(double green) {
        return green >= LEAST_LEVEL && green <= MOST_LEVEL;
    }

    /** The whole frame, found in the pictures. */
    public static TurfAsked of(Card frame) {
        return new TurfAsked(frame, null, ByHand.NOTHING, ByHand.NOTHING);
    }
}
