package footing.cli.text;

import footing.io.trial.TrialQuote;
import java.util.List;

/** Verdicts of trials below an answer. */
public final class TrialQuoteText {
    /** Above verdicts beside money. */
    public static final String NO_MONEY = "Tried side by side; no money above rests on it";

    /** Above verdicts beside what was worked out of the ground. */
    public static final String BEFORE_MODELS = "Tried side by side; pulls and rides measured here count before what is"
            + " worked out above, on that ground";

    private TrialQuoteText() {}

    /** {@code head} says what they stand beside. */
    public static String of(String head, List<TrialQuote> quotes, Letters letters) {
        Lines lines = new Lines(letters);
        lines.head(head);
        for (TrialQuote quote : quotes) {
            quote.lines().forEach(lines::item);
        }
        quotes.stream().flatMap(q -> q.limits().stream()).distinct().forEach(lines::item);
        return lines.toString();
    }
}
