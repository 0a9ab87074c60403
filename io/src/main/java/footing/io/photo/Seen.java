package footing.io.photo;

/** What came of a photo. */
public sealed interface Seen permits PrintSeen, TurfSeen, Seen.Refused {
    /**
     * Nothing: it is no picture that can be used.
     *
     * @param what is wrong
     * @param advice what to try
     */
    record Refused(String what, String advice) implements Seen {}
}
