package footing.io.words;

/** What to do about a machine. */
public enum Verb {
    /** A machine still to be bought, on other wheels than come with it. */
    ORDER_WITH,
    /** A machine still to be bought, on the wheels that come with it. */
    ORDER_AS_IT_COMES,
    /** Change over at once. */
    SWAP_NOW,
    /** Change over as the sets wear out. */
    SWAP_WHEN_WORN,
    /** Leave it as it is. */
    KEEP,
    /** Too close to call. */
    TOSS_UP;

    /** True for the clear advice to run other wheels. */
    public boolean changes() {
        return this == ORDER_WITH || this == SWAP_NOW || this == SWAP_WHEN_WORN;
    }
}
