package footing.core.future;

import footing.core.chance.Draws;
import footing.core.fleet.Position;

/**
 * What each draw belongs to. What is unknown of an assembly is the same on every machine, machines of a crew share
 * their ground, and luck belongs to a machine and position whatever is fitted there.
 */
public final class DrawKeys {
    /** Numbers set aside for one encounter; its purpose is a slot among them, so a skipped draw shifts nothing. */
    public static final int SLOTS = 8;

    public static final int GAP = 0;
    public static final int FIX = 1;
    public static final int ACCEPTANCE = 2;
    public static final int DELAY = 3;
    public static final int HOUR = 4;

    private DrawKeys() {}

    /** How an assembly's lives differ here from what is stated; draw 0 of the future. */
    public static long lifeUnsure(long seed, String assembly) {
        return Draws.key(seed, "lifeUnsure", assembly);
    }

    public static long flatFactor(long seed, String assembly) {
        return Draws.key(seed, "flatFactor", assembly);
    }

    public static long ruinFactor(long seed, String assembly) {
        return Draws.key(seed, "ruinFactor", assembly);
    }

    public static long makeUpLater(long seed, String crew) {
        return Draws.key(seed, "makeUpLater", crew);
    }

    /** The percentile of flatsPerSeason shared by a crew's machines. */
    public static long flatsPerSeason(long seed, String crew) {
        return Draws.key(seed, "flatsPerSeason", crew);
    }

    /** Lives of the sets at a position; draw n is the n-th set, 0 the one on it at the start. */
    public static long life(long seed, String machine, Position position) {
        return Draws.key(seed, "life", machine, position.name());
    }

    /** Encounters at a position; draw {@link #SLOTS}·j + slot. */
    public static long encounter(long seed, String machine, Position position) {
        return Draws.key(seed, "encounter", machine, position.name());
    }
}
