package footing.web.store;

import java.time.Instant;

/**
 * A line of the list of cases.
 *
 * @param version counts every change
 * @param at when it was last changed
 * @param machines how many the document names, 0 if that can't be read
 */
public record CaseSummary(
        String id, String name, long version, boolean archived, Instant at, int machines, int crews) {}
