package footing.io.photo;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Bare soil as shares of the ground looked at.
 *
 * @param first of the photo before the turn; null without one
 * @param second of that after it
 * @param level excess green below which a pixel was taken for soil; null if nothing was judged
 * @param doubts why it is not sure; empty if it is
 */
public record TurfSeen(
        @Nullable Half first, Half second, @Nullable Double level, List<Doubt> doubts) implements Seen {
    /**
     * What was read off one photo.
     *
     * @param share bare; null if it was not judged
     * @param corners of the frame in the picture; empty if not found
     * @param overlay what was taken for bare, tinted
     */
    public record Half(@Nullable Double share, List<Spot> corners, Overlay overlay) {
        public Half {
            corners = List.copyOf(corners);
        }
    }

    public TurfSeen {
        doubts = List.copyOf(doubts);
    }

    /** The share that was bare before the turn; null if it was not judged. */
    public @Nullable Double before() {
        return first == null ? null : first.share();
    }

    /** The share that was bare after it; null if it was not judged. */
    public @Nullable Double after() {
        return second.share();
    }

    public @Nullable Overlay overlayBefore() {
        return first == null ? null : first.overlay();
    }

    public Overlay overlayAfter() {
        return second.overlay();
    }

    /** The share laid bare by the turn, 0 at the least; null without both photos. */
    public @Nullable Double torn() {
        Double was = before();
        Double is = after();
        return was == null || is == null ? null : Math.max(0, is - was);
    }

    /** True if there are shares and no doubts. */
    public boolean isSure() {
        return after() != null && doubts.isEmpty();
    }
}
