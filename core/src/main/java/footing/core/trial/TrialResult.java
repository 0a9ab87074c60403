package footing.core.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a trial shows, and what a skeptic would hold against it.
 *
 * @param together over all surfaces; null for opposed pulls
 * @param bySurface in the order of driving; of opposed pulls and of a single surface empty
 * @param bouts null for measured runs
 */
public record TrialResult(
        Trial trial,
        @Nullable PairedResult together,
        Map<String, PairedResult> bySurface,
        @Nullable BoutResult bouts,
        List<Caveat> caveats) {
    public TrialResult {
        caveats = List.copyOf(caveats);
    }

    public static TrialResult of(Trial trial) {
        Skeptic skeptic = new Skeptic(trial);
        if (!trial.bouts().isEmpty()) {
            return new TrialResult(trial, null, Map.of(), BoutResult.of(trial.bouts()), skeptic.aboutBouts());
        }
        Pairing pairing = Pairing.of(trial.runs());
        Map<String, List<Pair>> blocks = pairing.bySurface();
        Map<String, PairedResult> bySurface = new LinkedHashMap<>();
        if (blocks.size() > 1) {
            blocks.forEach((surface, pairs) -> bySurface.put(surface, judged(trial, pairs)));
        }
        return new TrialResult(trial, judged(trial, pairing.pairs()), bySurface, null, skeptic.about(pairing));
    }

    private static PairedResult judged(Trial trial, List<Pair> pairs) {
        Question question = trial.question();
        return PairedResult.of(pairs, question.margin(), question.kind().usualSpread());
    }

    public Verdict verdict() {
        if (bouts != null) {
            return bouts.verdict();
        }
        return together == null ? Verdict.NOT_ENOUGH : together.verdict();
    }

    /** The better side, if one is shown and the goal makes one better. */
    public Optional<Side> better() {
        return better(verdict());
    }

    public Optional<Side> better(Verdict verdict) {
        Goal goal = bouts != null ? Goal.MORE : trial.question().goal();
        if (goal == Goal.NEITHER || verdict == Verdict.ALIKE || verdict == Verdict.NOT_ENOUGH) {
            return Optional.empty();
        }
        Side more = verdict == Verdict.A_MORE ? Side.A : Side.B;
        return Optional.of(goal == Goal.MORE ? more : more.other());
    }
}
