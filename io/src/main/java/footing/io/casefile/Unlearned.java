package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.core.records.Log;
import footing.io.records.CaseBackground;
import java.util.List;
import java.util.Optional;

/** A case as it would stand had nothing been written down: what it learns is what is held before any records. */
public final class Unlearned {
    private Unlearned() {}

    /** The same case without its records; empty if it takes no number from them. */
    public static Optional<Case> of(Case stated) {
        return FilledIn.isAsked(stated)
                ? Optional.of(new FilledIn(stated, nothing(stated)).filledIn())
                : Optional.empty();
    }

    private static Learned nothing(Case stated) {
        return Learner.learn(Log.of(List.of()), new CaseBackground(stated), FilledIn.WEAR_LIMIT);
    }
}
