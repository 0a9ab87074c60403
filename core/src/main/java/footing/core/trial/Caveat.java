package footing.core.trial;

import org.jspecify.annotations.Nullable;

/** What a skeptic would hold against a trial. */
public sealed interface Caveat {
    /** A measured condition whose mean differs between the sides. */
    record Uneven(Condition condition, double a, double b) implements Caveat {}

    /** A named condition that went mostly with one side; the names that side A and side B had most often. */
    record OneSided(Condition condition, String a, String b) implements Caveat {}

    /** One side went first in every pair. */
    record SameOrder(Side first) implements Caveat {}

    /** Pairs with other runs between them, so that the day may have changed meanwhile. */
    record Apart(int pairs) implements Caveat {}

    /** Runs that found no partner and count for nothing. */
    record Unpaired(int runs) implements Caveat {}

    /** A lane driven more than once. */
    record UsedLane(String lane, int runs) implements Caveat {}

    /** Surfaces on which the difference is not the same: chance of so much disagreement if it were. */
    record SurfacesDisagree(double p) implements Caveat {}

    /** Opposed pulls in which mass or pressure of a side was not noted. */
    record NotNoted(Condition condition, @Nullable Side side) implements Caveat {}
}
