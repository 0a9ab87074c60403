package footing.web.trial;

import footing.core.trial.BoutResult;
import footing.core.trial.PairedResult;
import footing.core.trial.TrialKind;
import footing.core.trial.TrialResult;
import footing.io.figure.PairLines;
import footing.io.form.Problem;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialReading;
import footing.io.words.CaveatWords;
import footing.io.words.Lists;
import footing.io.words.Shown;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import footing.web.answer.FigureView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trial on the large screen.
 *
 * @param sentence the verdict; why there is none where there is none yet
 * @param evidence what it rests on
 * @param surfaces the verdict on each, where there are several
 * @param doubts what a skeptic would say
 * @param limits what it is not
 * @param cautions of its kind
 * @param figure the pairs; null where there are none
 * @param runs of a file that came, in the order they were made; of a trial begun here empty
 * @param faults why the trial can't be judged; empty if it can
 */
record TrialView(
        String sentence,
        List<String> evidence,
        List<String> surfaces,
        List<String> doubts,
        String limits,
        List<String> cautions,
        @Nullable FigureView figure,
        List<String> runs,
        List<String> faults) {
    static TrialView of(StoredTrial trial, List<WrittenRun> runs) {
        TrialKind kind = trial.begun().map(Setup::kind).orElse(TrialKind.PULL);
        boolean none = trial.setup() != null && runs.stream().allMatch(WrittenRun::undone);
        if (none) {
            return without("Nothing is written down yet.", kind, List.of());
        }
        TrialReading reading = TrialText.of(trial, runs).read();
        if (reading instanceof TrialReading.Accepted accepted) {
            return judged(accepted.stated(), accepted.warnings(), trial.setup() == null);
        }
        List<String> faults = ((TrialReading.Refused) reading)
                .problems().stream().map(TrialView::said).toList();
        return without("This trial can’t be judged as it is.", kind, faults);
    }

    static String said(Problem problem) {
        return (problem.path().isEmpty() ? "" : problem.path() + ": ") + problem.said();
    }

    private static TrialView without(String sentence, TrialKind kind, List<String> faults) {
        return new TrialView(
                sentence,
                List.of(),
                List.of(),
                List.of(),
                TrialWords.limits(kind),
                TrialCautions.of(kind),
                null,
                List.of(),
                faults);
    }

    private static TrialView judged(StatedTrial stated, List<Problem> warnings, boolean came) {
        TrialResult result = TrialResult.of(stated.trial());
        Shown shown = stated.measure().shown(stated.metric());
        TrialWords words = new TrialWords(result, shown);
        List<String> evidence = new ArrayList<>();
        PairedResult together = result.together();
        if (together != null) {
            evidence.add(words.evidence(together));
            evidence.add(TrialWords.question(stated.trial().question().goal(), shown));
        }
        BoutResult bouts = result.bouts();
        if (bouts != null) {
            evidence.add(words.evidence(bouts));
        }
        List<String> held = stated.trial().question().heldEqual();
        evidence.add(held.isEmpty() ? "" : "Held equal: " + Lists.and(held) + ".");
        evidence.removeIf(String::isEmpty);
        List<String> surfaces = new ArrayList<>();
        result.bySurface().forEach((surface, r) -> surfaces.add(Lists.capital(surface) + ": " + words.verdict(r)));
        List<String> doubts = new ArrayList<>();
        result.caveats().forEach(c -> doubts.add(CaveatWords.of(c, result.trial(), stated.metric())));
        warnings.forEach(w -> doubts.add(said(w)));
        TrialKind kind = stated.measure().kind();
        return new TrialView(
                words.verdict(),
                evidence,
                surfaces,
                doubts,
                TrialWords.limits(kind),
                TrialCautions.of(kind),
                PairLines.of(result, shown).map(FigureView::of).orElse(null),
                came ? CameRuns.of(stated) : List.of(),
                List.of());
    }
}
