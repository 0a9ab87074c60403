package footing.io.photo;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Bare soil as shares of the ground looked at.
 *
 * @param before null without a photo of before, or if its frame was not found
 * @param after null if its frame was not found
 * @param doubts why it is not sure; empty if it is
 * @param overlayBefore null without a photo of before
 * @param overlayAfter what was taken for bare, tinted
 */
public record TurfSeen(
        @Nullable Double before,
        @Nullable Double after,
        List<Doubt> doubts,
        @Nullable Overlay overlayBefore,
        Overlay overlayAfter)
        implements Seen {
    public TurfSeen {
        doubts = List.copyOf(doubts);
    }

    /** The share laid bare by the turn, 0 at the least; null without both photos. */
    public @Nullable Double torn() {
        return before == null || after == null ? null : Math.max(0, after - before);
    }

    /** True if there are shares and no doubts. */
    public boolean isSure() {
        return after != null && doubts.isEmpty();
    }
}
