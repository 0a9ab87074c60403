package footing.web.cases;

import footing.web.store.Change;
import java.time.Instant;
import java.util.List;

/** One change of a case, as it is shown. */
record HistoryLine(long version, String said, String when, Instant at, boolean inForce, List<LineChanges.Line> lines) {
    /** @param before the state it was made from; null for the first */
    static HistoryLine of(Change change, @org.jspecify.annotations.Nullable Change before, boolean inForce) {
        List<LineChanges.Line> lines = before == null ? List.of() : LineChanges.between(before.text(), change.text());
        return new HistoryLine(
                change.version(), Spoken.change(change), Spoken.time(change.at()), change.at(), inForce, lines);
    }
}
