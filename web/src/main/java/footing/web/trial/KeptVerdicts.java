package footing.web.trial;

import footing.io.trial.StatedTrial;
import footing.io.trial.TrialQuote;
import footing.io.trial.TrialReading;
import footing.web.answer.TrialVerdicts;
import footing.web.bay.TrialPrints;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the trials kept with a case say elsewhere: of those in use that can be judged, the first begun first. */
@Configuration(proxyBeanMethods = false)
class KeptVerdicts {
    /** Verdicts, beside the money. */
    @Bean
    TrialVerdicts trialVerdicts(TrialStore store) {
        return id -> judged(store, id).stream().map(TrialQuote::of).toList();
    }

    /** Prints, for the ground. */
    @Bean
    TrialPrints trialPrints(TrialStore store) {
        return id -> judged(store, id).stream()
                .flatMap(t -> t.evidence().prints().stream())
                .toList();
    }

    private static List<StatedTrial> judged(TrialStore store, String caseId) {
        List<StatedTrial> trials = new ArrayList<>();
        for (StoredTrial trial : store.list(caseId)) {
            TrialReading reading = trial.archived()
                    ? null
                    : TrialText.of(trial, store.runs(trial.id())).read();
            if (reading instanceof TrialReading.Accepted accepted) {
                trials.add(0, accepted.stated());
            }
        }
        return trials;
    }
}
