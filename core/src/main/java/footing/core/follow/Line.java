package footing.core.follow;

import footing.core.future.Followed;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that is followed, against its band.
 *
 * @param unwritten flats without the minutes or the cost that it is summed up from
 */
public record Line(Followed what, double came, Band due, Standing standing, int unwritten) {
    /** From how many due on it isn't too early to call what came expected. */
    private static final double ENOUGH_DUE = 1;

    static List<Line> of(Step came, Bands bands, int withoutMinutes, int withoutCost) {
        List<Line> lines = new ArrayList<>();
        for (Followed what : Followed.values()) {
            int unwritten = switch (what) {
                case FLATS, SETS -> 0;
                case DOWN_HOURS -> withoutMinutes;
                case PAID -> withoutCost;
            };
            Band due = bands.at(what, came.hours());
            Followed counted = what == Followed.SETS ? Followed.SETS : Followed.FLATS;
            boolean early = bands.at(counted, came.hours()).mean() < ENOUGH_DUE;
            lines.add(new Line(what, came.of(what), due, standing(came.of(what), due, early, unwritten), unwritten));
        }
        return lines;
    }

    private static Standing standing(double came, Band due, boolean early, int unwritten) {
        if (came > due.high()) {
            // What isn't written down could only add to it.
            return Standing.MORE;
        }
        if (unwritten > 0) {
            return Standing.NOT_WRITTEN;
        }
        if (came < due.low()) {
            return Standing.LESS;
        }
        return early ? Standing.TOO_EARLY : Standing.AS_EXPECTED;
    }
}
