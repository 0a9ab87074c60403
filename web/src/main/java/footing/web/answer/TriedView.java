package footing.web.answer;

import footing.io.trial.TrialQuote;
import java.util.List;

/**
 * What was tried side by side, beside the money.
 *
 * @param lines verdicts, with what a skeptic would say
 * @param limits what they are not, and the cautions
 */
record TriedView(List<String> lines, List<String> limits) {
    static TriedView of(List<TrialQuote> quotes) {
        return new TriedView(
                quotes.stream().flatMap(q -> q.lines().stream()).toList(),
                quotes.stream().flatMap(q -> q.limits().stream()).distinct().toList());
    }
}
