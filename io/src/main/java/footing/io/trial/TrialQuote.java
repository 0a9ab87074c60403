package footing.io.trial;

import footing.core.trial.Condition;
import footing.core.trial.Run;
import footing.core.trial.Trial;
import footing.core.trial.TrialResult;
import footing.io.words.CaveatWords;
import footing.io.words.Figures;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A trial's verdict as other documents quote it.
 *
 * @param title of the trial, its number of runs and its days
 * @param verdict in a sentence
 * @param doubts what a skeptic would say
 * @param limits what it is not, and the cautions; never empty
 */
public record TrialQuote(String title, String verdict, List<String> doubts, List<String> limits) {
    public TrialQuote {
        doubts = List.copyOf(doubts);
        limits = List.copyOf(limits);
    }

    /** Judges a trial and quotes it. */
    public static TrialQuote of(StatedTrial stated) {
        TrialResult result = TrialResult.of(stated.trial());
        TrialWords words = new TrialWords(result, stated.measure().shown(stated.metric()));
        List<String> doubts = result.caveats().stream()
                .map(c -> CaveatWords.of(c, result.trial(), stated.metric()))
                .toList();
        List<String> limits = Stream.concat(
                        Stream.of(TrialWords.limits(stated.measure().kind())),
                        TrialCautions.of(stated.measure().kind()).stream())
                .filter(s -> !s.isEmpty())
                .toList();
        return new TrialQuote(title(stated), words.verdict(), doubts, limits);
    }

    private static String title(StatedTrial stated) {
        Trial trial = stated.trial();
        int runs = trial.runs().size() + trial.bouts().size();
        return stated.title() + " (" + Figures.counted(runs, "run") + ", " + days(trial) + ")";
    }

    /** The first and the last day noted. */
    private static String days(Trial trial) {
        List<String> days = Stream.concat(
                        trial.runs().stream().map(Run::conditions),
                        Stream.of(trial.a().usual(), trial.b().usual()))
                .map(c -> c.name(Condition.DAY))
                .filter(Objects::nonNull)
                .sorted()
                .distinct()
                .toList();
        if (days.isEmpty()) {
            return "day not noted";
        }
        String first = days.get(0);
        String last = days.get(days.size() - 1);
        return first.equals(last) ? first : first + " to " + last;
    }

    /** Everything in the order in which it is to be read. */
    public List<String> lines() {
        return Stream.concat(Stream.of(title + ": " + verdict), doubts.stream().map(d -> "A skeptic would say: " + d))
                .toList();
    }
}
