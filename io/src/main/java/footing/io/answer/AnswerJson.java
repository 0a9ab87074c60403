package footing.io.answer;

import footing.core.answer.Answer;
import footing.core.answer.Saving;
import footing.core.fleet.Case;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes an answer as a JSON document of the format {@value #FORMAT}. Money is in units of the currency, shares are
 * fractions, times are hours; what does not exist is null.
 */
public final class AnswerJson {
    public static final String FORMAT = "footing-answer/1";

    private AnswerJson() {}

    /**
     * Writes the document and leaves the writer open.
     *
     * @param notes what reading the case file warned of, told before the answer's own warnings
     */
    public static void write(Answer answer, List<String> notes, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> document(answer, notes, json));
        }
    }

    private static void document(Answer answer, List<String> notes, JsonText json) {
        Case.Heading heading = answer.of().heading();
        json.text("format", FORMAT);
        json.text("case", heading.title());
        json.text("asOf", heading.asOf().toString());
        json.text("currency", heading.currency());
        json.whole("futures", answer.futures());
        json.whole("seed", answer.seed());
        json.array("warnings", () -> warnings(answer, notes).forEach(json::text));
        MachineJson machine = new MachineJson(json);
        json.objects("machines", answer.machines(), machine::write);
        json.object("fleet", () -> {
            json.object("saving", () -> saving(answer.fleet().saving(), json));
            json.number("startCost", answer.fleet().startCost());
        });
    }

    private static List<String> warnings(Answer answer, List<String> notes) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(answer.warnings());
        answer.movedOn().ifPresent(all::add);
        if (!answer.complete()) {
            all.add("Stopped before everything was known: this is what was known by then.");
        }
        return all;
    }

    static void saving(Saving saving, JsonText json) {
        json.number("mean", saving.mean());
        json.number("standardError", saving.standardError());
        json.number("p10", saving.p10());
        json.number("p50", saving.p50());
        json.number("p90", saving.p90());
        json.number("chance", saving.chance());
    }
}
