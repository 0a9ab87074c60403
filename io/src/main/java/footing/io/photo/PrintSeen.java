package footing.io.photo;

import footing.core.ground.PrintOutline;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was read off a photo of a print.
 *
 * @param print null if none was found
 * @param error relative standard error of the area that the corners leave
 * @param corners of the card in the picture; empty if not found
 * @param border of the print in the picture; empty if not found
 * @param doubts why it is not sure; empty if it is
 * @param overlay the picture with what was found drawn over it, as PNG
 */
public record PrintSeen(
        @Nullable PrintOutline print,
        double error,
        List<Spot> corners,
        List<Spot> border,
        List<Doubt> doubts,
        Overlay overlay)
        implements Seen {
    public PrintSeen {
        corners = List.copyOf(corners);
        border = List.copyOf(border);
        doubts = List.copyOf(doubts);
    }

    /** True if there are measures and no doubts. */
    public boolean isSure() {
        return print != null && doubts.isEmpty();
    }
}
