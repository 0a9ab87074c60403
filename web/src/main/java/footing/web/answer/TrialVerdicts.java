package footing.web.answer;

import footing.io.trial.TrialQuote;
import java.util.List;

/** Where the verdicts of a case's trials come from that stand beside its money. */
@FunctionalInterface
public interface TrialVerdicts {
    /** Of a case by its id, in the order in which they are to be read. */
    List<TrialQuote> of(String caseId);
}
