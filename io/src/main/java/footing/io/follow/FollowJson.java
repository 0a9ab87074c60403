package footing.io.follow;

import footing.core.follow.FollowUp;
import footing.core.follow.Line;
import footing.core.follow.Step;
import footing.core.follow.Warranty;
import footing.core.future.Followed;
import footing.io.answer.JsonText;
import footing.io.words.FollowWords;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A forecast held against what came as one JSON document, {@value #FORMAT}:
 *
 * <pre>
 * { "format", "made", "asOf", "seed", "sentence",
 *   "machines": [ { "id", "wheels", "when", "from", "to", "hours", "late", "beyond", "others": [..], "sentence",
 *       "followed": [ {"what","came","low","mean","high","standing","unwritten","sentence"} ],
 *       "came": [ {"hours","flats","sets","downHours","paid"} ] } ],
 *   "silent": [..], "fleet": {"hours", "followed", "came"} or null,
 *   "warranties": [ {"machine","position","assembly","fitted","hours","months","ofHours","ofMonths","hoursLeft",
 *       "monthsLeft","over","unused","credit","sentence"} ] }
 * </pre>
 */
public final class FollowJson {
    public static final String FORMAT = "footing-follow/1";

    private FollowJson() {}

    /** Writes the document and leaves the writer open. */
    public static void write(FollowUp up, List<Warranty> warranties, Writer to) {
        String currency = up.forecast().currency();
        try (JsonText json = new JsonText(to)) {
            json.object(() -> {
                json.text("format", FORMAT);
                json.text("made", up.forecast().made().toString());
                json.text("asOf", up.forecast().asOf().toString());
                json.whole("seed", up.forecast().seed());
                json.text("sentence", FollowWords.summary(up));
                json.objects("machines", up.machines(), m -> machine(json, m, currency));
                json.array("silent", () -> up.silent().forEach(json::text));
                json.objectOrNull("fleet", up.fleet().orElse(null), f -> {
                    json.number("hours", last(f.came()).hours());
                    followed(json, f.lines(), currency);
                    came(json, f.came());
                });
                json.objects("warranties", warranties, w -> warranty(json, w, currency));
            });
        }
    }

    private static void machine(JsonText json, FollowUp.Machine m, String currency) {
        json.text("id", m.forecast().id());
        json.text("wheels", m.forecast().plan().wheels());
        json.text("when", m.forecast().plan().when().name().toLowerCase(Locale.ROOT));
        json.text("from", m.happened().from().toString());
        json.text("to", m.happened().to().toString());
        json.number("hours", m.happened().hours());
        json.flag("late", m.late());
        json.flag("beyond", m.beyond());
        json.array("others", () -> m.others().stream().sorted().forEach(json::text));
        json.text("sentence", FollowWords.head(m));
        followed(json, m.lines(), currency);
        came(json, m.came());
    }

    private static Step last(List<Step> steps) {
        return steps.get(steps.size() - 1);
    }

    private static void followed(JsonText json, List<Line> lines, String currency) {
        json.objects("followed", lines, l -> {
            json.text("what", ForecastFile.name(l.what()));
            json.number("came", l.came());
            json.number("low", l.due().low());
            json.number("mean", l.due().mean());
            json.number("high", l.due().high());
            json.text(
                    "standing",
                    switch (l.standing()) {
                        case AS_EXPECTED -> "as expected";
                        case MORE -> "more";
                        case LESS -> "less";
                        case TOO_EARLY -> "too early";
                        case NOT_WRITTEN -> "not written";
                    });
            json.whole("unwritten", l.unwritten());
            json.text("sentence", FollowWords.line(l, currency));
        });
    }

    private static void came(JsonText json, List<Step> steps) {
        json.objects("came", steps, s -> {
            json.number("hours", s.hours());
            for (Followed what : Followed.values()) {
                json.number(ForecastFile.name(what), s.of(what));
            }
        });
    }

    private static void warranty(JsonText json, Warranty w, String currency) {
        json.text("machine", w.machine());
        json.text("position", w.position().name().toLowerCase(Locale.ROOT));
        json.text("assembly", w.assembly());
        json.textOrNull("fitted", w.fitted().map(Object::toString).orElse(null));
        number(json, "hours", w.hours());
        number(json, "months", w.months());
        number(json, "ofHours", w.terms().hours());
        number(json, "ofMonths", w.terms().months());
        number(json, "hoursLeft", w.hoursLeft());
        number(json, "monthsLeft", w.monthsLeft());
        json.flag("over", w.over());
        number(json, "unused", w.unused());
        json.number("credit", w.unused().isPresent() && !w.unsure() ? w.unused().getAsDouble() * w.price() : null);
        json.text("sentence", FollowWords.warranty(w, currency));
    }

    private static void number(JsonText json, String name, OptionalDouble value) {
        json.number(name, value.isPresent() ? value.getAsDouble() : null);
    }
}
