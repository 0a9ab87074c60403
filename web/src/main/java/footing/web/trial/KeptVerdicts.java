package footing.web.trial;

import footing.io.trial.TrialQuote;
import footing.io.trial.TrialReading;
import footing.web.answer.TrialVerdicts;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;

/** Verdicts of the trials kept with a case: of those in use that can be judged, the first begun first. */
@Component
class KeptVerdicts implements TrialVerdicts {
    private final TrialStore store;

    KeptVerdicts(TrialStore store) {
        this.store = store;
    }

    @Override
    public List<TrialQuote> of(String caseId) {
        List<TrialQuote> quotes = new ArrayList<>();
        for (StoredTrial trial : store.list(caseId)) {
            TrialReading reading = trial.archived()
                    ? null
                    : TrialText.of(trial, store.runs(trial.id())).read();
            if (reading instanceof TrialReading.Accepted accepted) {
                quotes.add(0, TrialQuote.of(accepted.stated()));
            }
        }
        return quotes;
    }
}
