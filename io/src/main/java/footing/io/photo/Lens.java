package footing.io.photo;

import java.util.List;

/**
 * How a lens bends straight lines: a place at distance r from the middle of the picture belongs at r·(1 + κ·r²), r in
 * half diagonals. One term, which is what remains of phones' lenses; κ is the one that makes the sides of the card
 * straightest.
 *
 * @param bend κ; 0 for a perfect lens
 */
record Lens(double bend, double x, double y, double half) {
    /** Bends beyond it are not corrected, since one term no longer describes them. */
    static final double MOST = 0.15;

    /** Places farther out are none of the lens's. */
    private static final double SEEN = 3;

    private static final double STEP = 0.0005;
    private static final int ROUNDS = 40;
    private static final double NEAR = 1e-7;

    static Lens straight(int width, int height) {
        return new Lens(0, (width - 1) / 2.0, (height - 1) / 2.0, Math.hypot(width, height) / 2);
    }

    Spot straightened(Spot spot) {
        double r = Math.hypot(spot.x() - x, spot.y() - y) / half;
        return r < SEEN ? scaled(spot, 1 + bend * r * r) : spot;
    }

    /** The other way, by repeated approach. */
    Spot bent(Spot spot) {
        double r = Math.hypot(spot.x() - x, spot.y() - y) / half;
        if (!(r > 0 && r < SEEN)) {
            return spot;
        }
        double at = r;
        double before = 0;
        for (int i = 0; i < ROUNDS && Math.abs(at - before) > NEAR; i++) {
            before = at;
            at = Math.min(SEEN, r / Math.max(0.5, 1 + bend * at * at));
        }
        return scaled(spot, at / r);
    }

    private Spot scaled(Spot spot, double factor) {
        return new Spot(x + factor * (spot.x() - x), y + factor * (spot.y() - y));
    }

    /** The lens that makes lines straightest, each given by a few places along it, the first and last its ends. */
    static Lens of(List<List<Spot>> lines, int width, int height) {
        Lens best = straight(width, height);
        double least = best.bow(lines);
        for (double bend = -MOST; bend <= MOST; bend += STEP) {
            Lens lens = new Lens(bend, best.x, best.y, best.half);
            double bow = lens.bow(lines);
            if (bow < least) {
                best = lens;
                least = bow;
            }
        }
        return best;
    }

    /** How far lines still are from straight: the mean square of their bows as shares of their lengths. */
    double bow(List<List<Spot>> lines) {
        double sum = 0;
        for (List<Spot> line : lines) {
            double share = bowOf(line);
            sum += share * share;
        }
        return sum / lines.size();
    }

    /** By how much the middle of a line lies off the chord between its ends, as a share of the chord; signed. */
    double bowOf(List<Spot> line) {
        Spot a = straightened(line.get(0));
        Spot b = straightened(line.get(line.size() - 1));
        double sum = 0;
        for (Spot spot : line.subList(1, line.size() - 1)) {
            Spot p = straightened(spot);
            sum += (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        }
        double chord = a.to(b);
        return sum / (line.size() - 2) / (chord * chord);
    }
}
