package footing.web.store;

import footing.web.store.Change.Kind;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One row of a case's history.
 *
 * @param standsFor the version that first held this document: this one, or the one undo or redo went to
 * @param parent the version undo goes back to; null for the first
 */
record Revision(
        long version,
        Kind kind,
        long standsFor,
        @Nullable Long parent,
        String name,
        String text,
        String what,
        Instant at) {
    static Revision first(String name, String text, String what, Instant at) {
        return new Revision(1, Kind.CREATED, 1, null, name, text, what, at);
    }

    /** A new state made from this one. */
    Revision next(Kind kind, String newName, String newText, String done, Instant now) {
        return new Revision(version + 1, kind, version + 1, standsFor, newName, newText, done, now);
    }

    /** The state of an earlier or undone one again. */
    Revision goTo(Kind kind, Revision target, String done, Instant now) {
        return new Revision(version + 1, kind, target.standsFor, target.parent, target.name, target.text, done, now);
    }

    /** Something that leaves the state as it is. */
    Revision note(Kind kind, String done, Instant now) {
        return goTo(kind, this, done, now);
    }

    Change shown() {
        return new Change(version, kind, name, what, at, text);
    }
}
