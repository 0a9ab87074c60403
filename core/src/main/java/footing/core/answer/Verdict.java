package footing.core.answer;

/** How clear a recommendation is. */
public enum Verdict {
    /** The change saves clearly, on the mean and in most futures. */
    PAYS,
    /** What the machine carries is clearly cheapest. */
    KEEP,
    /** Too close to call. */
    CLOSE
}
