package footing.web.store;

import java.time.Instant;

/**
 * One state a case has been in.
 *
 * @param version the case's version from then on
 * @param what what was done, in words
 * @param text the document from then on
 */
public record Change(long version, Kind kind, String name, String what, Instant at, String text) {
    /** What led to it. */
    public enum Kind {
        CREATED,
        CHANGED,
        RENAMED,
        UNDONE,
        REDONE,
        ARCHIVED,
        RESTORED
    }
}
