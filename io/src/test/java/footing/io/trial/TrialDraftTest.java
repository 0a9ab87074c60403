package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.trial.Condition;
import footing.core.trial.Trial;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written down run by run reads back as it was meant. */
class TrialDraftTest {
    private static Map<String, String> run(String side, String value, String surface) {
        Map<String, String> run = new LinkedHashMap<>();
        run.put("side", side);
        run.put("steady", value);
        run.put("surface", surface);
        run.put("lane", "1");
        run.put("note", "");
        return run;
    }

    private static TrialDraft draft(String name, String surface) {
        return new TrialDraft(
                Map.of("kind", "pull", "title", "A trial: \"quoted\" # and more", "margin", "8 %"),
                Map.of("name", name, "pressure", "12 psi", "day", "2027-02-06"),
                Map.of("name", "other"),
                List.of("fuel, to the mark"),
                List.of(run("a", "417 lbf", surface), run("b", "1e2 lbf", surface)));
    }

    private static Trial read(TrialDraft draft) {
        TrialReading reading = TrialFile.read(draft.yaml(), "trial.yaml");
        assertThat(reading).as(draft.yaml() + reading).isInstanceOf(TrialReading.Accepted.class);
        return ((TrialReading.Accepted) reading).stated().trial();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "air",
                "true",
                "null",
                "~",
                "12",
                "1e3",
                "0x1f",
                "yes",
                "a: b",
                "a #b",
                "{x}",
                "[x]",
                "- x",
                "*x",
                "&x",
                "x,y",
                "it's",
                "say \"no\"",
                "back\\slash",
                "naïve 😀",
                "24x12.00-12 air",
                "-",
                "%",
                "@x",
                "`x",
                ".5",
                "2027-02-06"
            })
    void yaml_namesOfEverySort_readBackAsTheyWere(String name) {
        Trial trial = read(draft(name, name));
        assertThat(trial.a().name()).isEqualTo(name);
        assertThat(trial.runs().get(1).surface()).isEqualTo(name);
    }

    @Test
    void yaml_valuesAndConditions_readBackInSiUnits() {
        Trial trial = read(draft("air", "dry fescue"));
        assertThat(trial.runs().get(0).value()).isEqualTo(417 * 4.4482216152605);
        assertThat(trial.a().usual().number(Condition.PRESSURE)).isEqualTo(12 * 4.4482216152605 / 0.00064516);
        assertThat(trial.a().usual().name(Condition.DAY)).isEqualTo("2027-02-06");
        assertThat(trial.question().margin().size()).isEqualTo(0.08);
        assertThat(trial.question().heldEqual()).containsExactly("fuel, to the mark");
    }

    @Test
    void yaml_withoutRuns_isRefusedForThatAlone() {
        TrialDraft empty = new TrialDraft(
                Map.of("kind", "pull", "title", "t"), Map.of("name", "a"), Map.of("name", "b"), List.of(), List.of());
        TrialReading reading = TrialFile.read(empty.yaml(), "trial.yaml");
        assertThat(((TrialReading.Refused) reading).problems())
                .extracting(p -> p.path())
                .containsExactly("runs");
    }
}
