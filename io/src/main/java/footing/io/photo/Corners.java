package footing.io.photo;

import java.util.ArrayList;
import java.util.List;

/** Puts four corners in the order in which a sheet is measured. */
final class Corners {
    private Corners() {}

    /**
     * Corners going clockwise as seen, the first edge being a long one if {@code width} is the longer side. Perspective
     * can make the longer side look shorter, so the ratio of the mean opposite edges decides.
     */
    static List<Spot> ordered(List<Spot> corners, double width, double length) throws PhotoTrouble {
        List<Spot> round = new ArrayList<>(corners);
        double area = 0;
        for (int i = 0; i < 4; i++) {
            Spot a = round.get(i);
            Spot b = round.get((i + 1) % 4);
            Spot c = round.get((i + 2) % 4);
            area += Math.signum(a.turn(b, c));
        }
        if (Math.abs(area) != 4) {
            throw new PhotoTrouble("the four corners don't go round a sheet", "name them going round the sheet");
        }
        if (area < 0) {
            java.util.Collections.reverse(round);
        }
        double first = round.get(0).to(round.get(1)) + round.get(2).to(round.get(3));
        double second = round.get(1).to(round.get(2)) + round.get(3).to(round.get(0));
        if (first >= second != width >= length) {
            java.util.Collections.rotate(round, 1);
        }
        return round;
    }
}
