package footing.core.future;

import footing.core.fleet.Position;

/**
 * What one position goes through under one wish: which set is on it at the start, which is fitted when that is worn.
 * Entries that wish the same at a position share its course.
 *
 * @param keepsHours true if the set at the start has the hours of the one on the machine now (carried or treated)
 */
record Course(Position position, Article carried, Article wanted, Article atStart, boolean keepsHours) {

    /** True if the package wished for differs from the carried one here. */
    boolean changes() {
        return wanted != carried;
    }

    /** What is fitted with {@code rest} hours to the trade: the wanted set, unless the rest is too short for it. */
    Article choose(Article comingOff, double rest, double shortRest) {
        if (wanted == carried || rest >= shortRest * wanted.medianLife) {
            return wanted;
        }
        return cost(carried, comingOff) < 0.7 * cost(wanted, comingOff) ? carried : wanted;
    }

    /** What a set costs when another comes off: as a renewal if it is the same kind, whole otherwise. */
    static double cost(Article fitted, Article comingOff) {
        return fitted == comingOff ? fitted.renewalPrice : fitted.price;
    }
}
