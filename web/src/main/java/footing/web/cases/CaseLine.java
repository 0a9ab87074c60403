package footing.web.cases;

import footing.web.store.CaseSummary;
import java.time.Instant;

/** A case in the list. */
record CaseLine(String id, String name, long version, String facts, String changed, Instant at) {
    static CaseLine of(CaseSummary c) {
        String facts = c.machines() == 0
                ? "can’t be answered as it stands"
                : Spoken.count(c.machines(), "machine") + ", " + Spoken.count(c.crews(), "crew");
        return new CaseLine(c.id(), c.name(), c.version(), facts, Spoken.time(c.at()), c.at());
    }
}
