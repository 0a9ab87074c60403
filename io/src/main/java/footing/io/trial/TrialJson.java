package footing.io.trial;

import footing.core.trial.BoutResult;
import footing.core.trial.Interval;
import footing.core.trial.PairedResult;
import footing.core.trial.Side;
import footing.core.trial.Trial;
import footing.core.trial.TrialResult;
import footing.core.trial.Verdict;
import footing.io.form.Problem;
import footing.io.words.CaveatWords;
import footing.io.words.FindingWords;
import footing.io.words.PhotoWords;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A trial's result as a JSON document of the format {@value #FORMAT}. Values are in SI units (shares as fractions), the
 * difference is A less B, what does not exist is null. The resampled interval is too narrow with few pairs and decides
 * nothing.
 */
public final class TrialJson {
    public static final String FORMAT = "footing-trial-result/1";

    private final StatedTrial stated;
    private final TrialResult result;
    private final TrialWords words;

    private TrialJson(StatedTrial stated, TrialResult result) {
        this.stated = stated;
        this.result = result;
        words = new TrialWords(result, stated.measure().shown(stated.metric()));
    }

    /** The document as indented JSON. */
    public static String of(StatedTrial stated, TrialResult result, List<Problem> warnings) {
        Map<String, Object> document = new TrialJson(stated, result).document(warnings);
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build()
                .writeValueAsString(document);
    }

    private Map<String, Object> document(List<Problem> warnings) {
        Trial trial = result.trial();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", FORMAT);
        json.put("title", stated.title());
        json.put("kind", TrialForm.word(trial.question().kind()));
        json.put("judged", stated.measure().key());
        json.put("a", trial.a().name());
        json.put("b", trial.b().name());
        json.put("sentence", words.verdict());
        PairedResult together = result.together();
        if (together != null) {
            json.putAll(paired(together));
        }
        BoutResult bouts = result.bouts();
        if (bouts != null) {
            json.putAll(opposed(bouts));
        }
        Map<String, Object> surfaces = new LinkedHashMap<>();
        result.bySurface().forEach((name, r) -> surfaces.put(name, paired(r)));
        json.put("surfaces", surfaces);
        json.put("heldEqual", trial.question().heldEqual());
        json.put(
                "caveats",
                result.caveats().stream()
                        .map(c -> CaveatWords.of(c, trial, stated.metric()))
                        .toList());
        json.put("logs", logs());
        json.put("photos", photos());
        json.put("warnings", warnings.stream().map(Problem::toString).toList());
        json.put("limits", TrialWords.limits(trial.question().kind()));
        json.put("cautions", TrialCautions.of(trial.question().kind()));
        return json;
    }

    private Map<String, Object> paired(PairedResult r) {
        Map<String, Object> json = verdict(r.verdict());
        json.put("pairs", r.pairs().size());
        json.put("meanA", finite(r.meanOf(Side.A)));
        json.put("meanB", finite(r.meanOf(Side.B)));
        var test = r.test();
        Interval interval = r.interval();
        json.put("difference", test == null ? null : test.mean());
        json.put("spread", test == null ? null : test.spread());
        json.put("low95", interval == null ? null : interval.low());
        json.put("high95", interval == null ? null : interval.high());
        Interval resampled = r.resampled();
        json.put("low95Resampled", resampled == null ? null : resampled.low());
        json.put("high95Resampled", resampled == null ? null : resampled.high());
        json.put("chanceIfNoDifference", test == null ? null : test.p());
        json.put("margin", finite(r.margin()));
        var equivalence = r.equivalence();
        json.put("chanceIfAtMargin", equivalence == null ? null : equivalence.p());
        json.put("furtherPairs", r.furtherPairs());
        return json;
    }

    private Map<String, Object> opposed(BoutResult r) {
        Map<String, Object> json = verdict(r.verdict());
        json.put("wins", r.test().wins());
        json.put("losses", r.test().losses());
        json.put("evens", r.test().evens());
        json.put("chanceIfNoDifference", r.test().p());
        json.put("furtherPulls", r.furtherBouts());
        return json;
    }

    private Map<String, Object> verdict(Verdict verdict) {
        Map<String, Object> json = new LinkedHashMap<>();
        var better = result.better(verdict);
        json.put("verdict", TrialWords.word(verdict, better));
        json.put("better", better.map(s -> s == Side.A ? "a" : "b").orElse(null));
        return json;
    }

    private List<Map<String, Object>> logs() {
        List<Map<String, Object>> notes = new ArrayList<>();
        for (StatedTrial.LogNote note : stated.logs()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("run", note.run());
            json.put("log", note.log());
            json.put("finding", FindingWords.of(note.finding()));
            notes.add(json);
        }
        return notes;
    }

    private Map<String, Object> photos() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("measured", stated.evidence().photos());
        List<Map<String, Object>> doubts = new ArrayList<>();
        for (StatedTrial.PhotoNote note : stated.evidence().doubts()) {
            Map<String, Object> doubt = new LinkedHashMap<>();
            doubt.put("run", note.run());
            doubt.put("photo", note.photo());
            doubt.put("sentence", PhotoWords.of(note.doubt()));
            doubts.add(doubt);
        }
        json.put("doubts", doubts);
        json.put("tried", PhotoWords.TRIED);
        return json;
    }

    private static @Nullable Double finite(double x) {
        return Math.abs(x) < Double.POSITIVE_INFINITY ? x : null;
    }
}
