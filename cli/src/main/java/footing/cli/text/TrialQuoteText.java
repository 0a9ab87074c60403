package footing.cli.text;

import footing.io.trial.TrialQuote;
import java.util.List;

/** Verdicts of trials below an answer. */
public final class TrialQuoteText {
    private TrialQuoteText() {}

    public static String of(List<TrialQuote> quotes, Letters letters) {
        Lines lines = new Lines(letters);
        lines.head("Tried side by side; no money above rests on it");
        for (TrialQuote quote : quotes) {
            quote.lines().forEach(lines::item);
        }
        quotes.stream().flatMap(q -> q.limits().stream()).distinct().forEach(lines::item);
        return lines.toString();
    }
}
