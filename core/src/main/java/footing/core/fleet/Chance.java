package footing.core.fleet;

/** The two kinds of chance, never mixed. */
public enum Chance {
    /** One value; no three-point may stand here. */
    NONE,
    /** One draw for a whole future: what nobody knows yet. */
    UNKNOWN,
    /** A fresh draw each time: luck. */
    VARIES
}
