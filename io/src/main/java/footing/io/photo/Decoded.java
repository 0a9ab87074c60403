package footing.io.photo;

/** What came of opening a picture. */
sealed interface Decoded {
    /** A picture. */
    record Opened(Picture picture) implements Decoded {}

    /**
     * None.
     *
     * @param what is wrong
     * @param advice what to try
     */
    record Unreadable(String what, String advice) implements Decoded {}
}
