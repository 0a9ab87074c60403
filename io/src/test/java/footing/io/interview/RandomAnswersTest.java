package footing.io.interview;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever is typed ends in a case that can be read, or in errors at the fields. */
class RandomAnswersTest {
    private static final int MAPS = 2000;
    private static final long SEED = 20270301;

    private static final List<String> NASTY = List.of(
            "\"quoted\" and 'single'",
            "a: b",
            ": {",
            "- item",
            "# no comment",
            "x # y",
            "=SUM(A1:A9)",
            "line\nbreak",
            "tab\there",
            "\r\n",
            "\u0000",
            "\u0007bell",
            "\uFEFFmark",
            "Grünfläche 草刈り 🌱",
            "\u2028\u2029",
            "null",
            "true",
            "~",
            "*alias",
            "&anchor",
            "!!tag",
            "%TAG",
            "@at",
            "`tick",
            "{a: [1",
            "]",
            "---",
            "...",
            "1e400",
            "NaN",
            "-0",
            "99999999999999999999",
            "0",
            "1",
            "12",
            "50 %",
            "100%",
            "0.5",
            "25 min",
            "3 h",
            "04-05",
            "12-31",
            "24x12-12",
            "999x1-1",
            "8x7.99-3",
            "?",
            "",
            " ",
            "\\",
            "\\n",
            "\\u0041",
            "a  b ",
            " lead",
            "\uD83C",
            "x".repeat(300),
            "end:",
            "One crew, #1",
            "\u00A0",
            "\u200B");

    private final Random random = new Random(SEED);

    @Test
    void caseText_randomAnswers_isACaseOrFieldErrors() {
        int cases = 0;
        for (int i = 0; i < MAPS; i++) {
            Map<String, String> answers = answers(i % 2 == 0);
            Map<String, String> faults = Interview.faults(answers);
            assertThat(Interview.fields().keySet()).containsAll(faults.keySet());
            if (!faults.isEmpty()) {
                answers.keySet().removeAll(faults.keySet());
            }
            if (Interview.faults(answers).isEmpty()) {
                check(i, answers);
                cases++;
            }
        }
        assertThat(cases).isGreaterThan(MAPS / 2);
    }

    private static void check(int i, Map<String, String> answers) {
        Case c = Answers.read(answers);
        String title = answers.get("title");
        String kind = answers.get("kind");
        if (!Field.isUnknown(title)) {
            assertThat(c.heading().title()).as("map %d of seed %d", i, SEED).isEqualTo(title);
        }
        if (!Field.isUnknown(kind)) {
            assertThat(c.machine("m1").kind()).as("map %d of seed %d", i, SEED).isEqualTo(kind);
        }
    }

    private Map<String, String> answers(boolean sensible) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (Field field : Interview.fields().values()) {
            if (random.nextInt(3) > 0) {
                boolean text = field.shape().kind() == FieldKind.TEXT;
                answers.put(field.id(), sensible && !text ? fitting(field) : nasty());
            }
        }
        return answers;
    }

    private String nasty() {
        String one = NASTY.get(random.nextInt(NASTY.size()));
        return random.nextInt(4) == 0 ? one + NASTY.get(random.nextInt(NASTY.size())) : one;
    }

    /** Something that fits the field alone, ends of its range before all. */
    private String fitting(Field field) {
        Shape shape = field.shape();
        double share = List.of(0.0, 1.0, 0.001, random.nextDouble()).get(random.nextInt(4));
        double x = shape.least() + share * (shape.most() - shape.least());
        String number = Plain.number(shape.whole() ? Math.rint(x) : x);
        return switch (shape.kind()) {
            case NUMBER, MONEY, HOURS -> number;
            case SHARE -> number + " %";
            case DURATION -> number + " min";
            case CHOICE ->
                shape.choices().get(random.nextInt(shape.choices().size())).value();
            case DATE -> (1 + random.nextInt(12)) + "-" + (1 + random.nextInt(28));
            case SIZE -> (10 + random.nextInt(20)) + "x" + (3 + random.nextInt(10)) + ".5-" + (4 + random.nextInt(6));
            case CURRENCY -> List.of("USD", "EUR", "JPY").get(random.nextInt(3));
            case TEXT -> nasty();
        };
    }
}
