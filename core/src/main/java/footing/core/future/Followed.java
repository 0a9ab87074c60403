package footing.core.future;

/** What a shop can write down itself, and so hold against a forecast. */
public enum Followed {
    FLATS,
    /** Sets fitted in place of others, but for what is changed over at the start. */
    SETS,
    /** Hours until the machine cut again, over all flats. */
    DOWN_HOURS,
    /** Paid out of pocket for flats: the fix and the tires it took, at the prices of the day. */
    PAID
}
