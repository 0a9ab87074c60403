package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.records.Log;
import java.util.List;
import java.util.Optional;

/** A case as it would stand had nothing been written down: what it learns is what is held before any records. */
public final class Unlearned {
    private Unlearned() {}

    /** The same case without its records; empty if it takes no number from them. */
    public static Optional<Case> of(Case stated) {
        return FilledIn.isAsked(stated)
                ? Optional.of(new FilledIn(stated, Log.of(List.of())).filledIn())
                : Optional.empty();
    }
}
