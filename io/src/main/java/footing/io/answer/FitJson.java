package footing.io.answer;

import footing.core.fitting.Finding;
import footing.core.fitting.Fit;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.io.words.FitWords;
import footing.io.words.SlopeCaution;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Writes a fit and the set-up that follows as a JSON document of the format {@value #FORMAT}. The two numbers of a test
 * are in SI units; lengths of the set-up in millimeters, masses in kilograms, angles in degrees.
 */
public final class FitJson {
    public static final String FORMAT = "footing-fit/1";

    private final JsonText json;
    private final JudgedJson judged;

    private FitJson(JsonText json) {
        this.json = json;
        judged = new JudgedJson(json);
    }

    /** Writes the document and leaves the writer open; {@code measured} is empty if nothing was. */
    public static void write(Case stated, Fit fit, SetUp setUp, List<Measured.Judgment> measured, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> new FitJson(json).document(stated, fit, setUp, measured));
        }
    }

    private void document(Case stated, Fit fit, SetUp setUp, List<Measured.Judgment> measured) {
        json.text("format", FORMAT);
        json.text("case", stated.heading().title());
        json.text("machine", setUp.machine());
        json.text("package", fit.wheels());
        json.text("verdict", word(fit.verdict()));
        json.objects("tests", fit.findings(), this::finding);
        json.array("toFindOut", () -> fit.open().forEach(o -> json.text(FitWords.act(o))));
        json.object("setUp", () -> setUp(setUp));
        json.objects("measured", measured, j -> {
            json.text("what", word(j.what()));
            length("value", j.value());
            length("least", j.least());
            length("most", j.most());
            json.flag("reached", j.reached());
        });
    }

    private void finding(Finding f) {
        Position position = f.position();
        json.text("test", word(f.aspect()));
        json.textOrNull("position", position == null ? null : word(position));
        json.text("verdict", word(f.verdict()));
        json.text("why", word(f.why()));
        json.number("have", value(f.have()));
        json.number("need", value(f.need()));
        json.number("margin", value(f.margin()));
        json.text("counts", word(f.aspect().counts()));
        json.textOrNull("settle", f.settle() == null ? null : f.settle().path());
    }

    private static @Nullable Double value(OptionalDouble x) {
        return x.isPresent() ? x.getAsDouble() : null;
    }

    private void setUp(SetUp s) {
        for (Position position : Position.values()) {
            judged.write(word(position) + "Axle", s.rise(position), r -> {
                length("rise", r.by());
                json.flag("fromSizes", r.fromSizes());
            });
            judged.number(word(position) + "KilogramsMore", s.mass(position).map(m -> m.kilograms()));
        }
        judged.number("pitchDegrees", s.pitch().map(Angle::degrees));
        judged.write("deckLeftAlone", s.untouched(), u -> {
            length("rearTip", u.rearTip());
            length("frontTip", u.frontTip());
            length("heightLeverError", u.middle());
            length("rakeChange", u.rake());
        });
        judged.write("deck", s.deck(), d -> {
            length("heightBefore", d.heightBefore());
            length("heightAfter", d.heightAfter());
            length("rakeBefore", d.rakeBefore());
            length("rakeAfter", d.rakeAfter());
        });
        judged.write("hangerTurns", s.turns(), t -> {
            json.number("rear", t.rear());
            json.number("front", t.front());
        });
        judged.write("speed", s.speed(), x -> {
            json.number("ratio", x.ratio());
            json.number("pullRatio", 1 / x.ratio());
            json.flag("fromSizes", x.fromSizes());
        });
        judged.write("overTheTires", s.width(), w -> {
            length("before", w.before());
            length("after", w.after());
        });
        json.object("slope", () -> {
            json.text("caution", SlopeCaution.TEXT);
            judged.write("tipSideways", s.tip(), t -> {
                json.number("beforeDegrees", t.before().degrees());
                json.number("afterDegrees", t.after().degrees());
            });
        });
    }

    private void length(String name, Length length) {
        json.number(name + "Millimeters", length.millimeters());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
