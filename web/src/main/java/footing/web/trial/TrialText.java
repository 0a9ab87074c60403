package footing.web.trial;

import footing.io.trial.TrialDraft;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialReading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A trial as the file it is downloaded as. */
record TrialText(String text, String name) {
    static TrialText of(StoredTrial trial, List<WrittenRun> runs) {
        String content = trial.content();
        String fileName = trial.fileName();
        return content != null && fileName != null
                ? new TrialText(content, fileName)
                : of(
                        trial.begun().orElseThrow(),
                        runs.stream()
                                .filter(r -> !r.undone())
                                .map(WrittenRun::cells)
                                .toList());
    }

    static TrialText of(Setup setup, List<Map<String, String>> runs) {
        Map<String, String> top = new LinkedHashMap<>();
        top.put("kind", kind(setup));
        top.put("title", setup.title());
        top.put("units", setup.metric() ? "si" : "us");
        if (!setup.opposed()) {
            top.put("judge", setup.judge());
            top.put("margin", setup.margin());
        }
        return new TrialText(
                new TrialDraft(top, side(setup, setup.a()), side(setup, setup.b()), setup.held(), runs).yaml(),
                "trial.yaml");
    }

    private static Map<String, String> side(Setup setup, Map<String, String> keys) {
        Map<String, String> side = new LinkedHashMap<>(keys);
        side.put("day", setup.day());
        return side;
    }

    private static String kind(Setup setup) {
        return TrialFile.word(setup.kind());
    }

    TrialReading read() {
        return TrialFile.read(text, name);
    }
}
