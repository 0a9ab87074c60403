package footing.web.store;

import java.time.Instant;

/**
 * A case as it stands.
 *
 * @param name what it is called in the list
 * @param version counts every change; who saves names the version they saw
 * @param text the case file, which is the truth
 * @param at when it was last changed
 */
public record StoredCase(
        String id,
        String name,
        long version,
        String text,
        boolean archived,
        Instant at,
        boolean canUndo,
        boolean canRedo) {}
