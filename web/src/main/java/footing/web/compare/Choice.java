package footing.web.compare;

import footing.web.cases.Spoken;
import footing.web.store.CaseStore;
import footing.web.store.CaseSummary;
import footing.web.store.Change;
import java.util.List;
import java.util.Optional;

/** The states a case can be compared with: its own versions, and the other cases as they stand. */
record Choice(String id, List<Change> versions, List<CaseSummary> others) {
    private static final String VERSION = "version-";
    private static final String CASE = "case-";
    private static final int MOST_SHOWN = 200;

    /** A state: how it is named in an address and on the page, and its text. */
    record Side(String key, String said, String text) {}

    /** A line of a list to choose from. */
    record Line(String key, String label) {}

    static Choice of(CaseStore store, String id) {
        List<CaseSummary> others = store.list().stream()
                .filter(c -> !c.archived() && !c.id().equals(id))
                .toList();
        return new Choice(id, store.history(id), others);
    }

    /** The state of a key; empty if there is none such. */
    Optional<Side> side(CaseStore store, String key) {
        if (key.startsWith(CASE)) {
            return others.stream()
                    .filter(c -> key.equals(CASE + c.id()))
                    .findFirst()
                    .map(c -> new Side(
                            key,
                            "‘" + c.name() + "’ as it stands",
                            store.get(c.id()).text()));
        }
        return versions.stream()
                .filter(c -> key.equals(VERSION + c.version()))
                .findFirst()
                .map(this::side);
    }

    private Side side(Change c) {
        return new Side(VERSION + c.version(), said(c), c.text());
    }

    /** As the case stands. */
    Side present() {
        return side(versions.get(0));
    }

    /** The last version with another text than the present one; the present one if there is none. */
    Side previous() {
        String now = versions.get(0).text();
        return versions.stream()
                .filter(c -> !c.text().equals(now))
                .findFirst()
                .map(this::side)
                .orElseGet(this::present);
    }

    /** Latest first. */
    List<Line> ownLines() {
        return versions.stream()
                .limit(MOST_SHOWN)
                .map(c -> new Line(VERSION + c.version(), said(c)))
                .toList();
    }

    List<Line> otherLines() {
        return others.stream().map(c -> new Line(CASE + c.id(), c.name())).toList();
    }

    private String said(Change c) {
        boolean now = c.version() == versions.get(0).version();
        return "Version " + c.version() + (now ? ", as it stands" : "") + ", " + Spoken.time(c.at()) + ": "
                + Spoken.change(c);
    }
}
