package footing.core.fleet;

import footing.core.chance.Spread;

/** What a key is taken to be when nobody states it, and why. */
public record Default(Rule rule, String why) {
    /** Finds the value from what stands beside it. */
    @FunctionalInterface
    public interface Rule {
        Spread value(Beside beside);
    }

    /** What a default may look at. */
    public interface Beside {
        /** The value in force of another key: of the same place, or of the crew where the rule says so. */
        Spread get(Key key);

        /** The value in force of a key of the assembly the machine carries at a position; for keys of a machine. */
        Spread ofCarried(Position position, Key key);

        /** The kind of the assembly the key belongs to. */
        Kind kind();
    }
}
