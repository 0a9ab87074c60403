package footing.web.store;

import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A case as it stands.
 *
 * @param name what it is called in the list
 * @param version counts every change; who saves names the version they saw
 * @param text the case file, which is the truth
 * @param at when it was last changed
 * @param beside the folder of the records it names; null if it names none that are kept here
 */
public record StoredCase(
        String id,
        String name,
        long version,
        String text,
        boolean archived,
        Instant at,
        boolean canUndo,
        boolean canRedo,
        @Nullable Path beside) {
    /** The same with its records in a folder; null if there are none. */
    StoredCase with(@Nullable Path folder) {
        return new StoredCase(id, name, version, text, archived, at, canUndo, canRedo, folder);
    }

    /** The case as its text states it. */
    public Reading read() {
        return read(text);
    }

    /** The case as a changed text would state it. */
    public Reading read(String changed) {
        return CaseFile.read(changed, "case file", beside);
    }
}
