package footing.io.answer;

import static footing.io.words.Invented.saving;
import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Verdict;
import footing.core.fleet.When;
import footing.io.words.Invented;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class AnswerJsonTest {
    private static final Answer ANSWER = new Invented()
            .machine("A", false, Verdict.PAYS, "airless")
            .saves("A", "airless", When.NOW, saving(1000.5, -200, 1800, 0.97), 900)
            .breakEven(2.3, 6.7)
            .answer();

    private static JsonNode written(Answer answer, String... notes) {
        StringWriter text = new StringWriter();
        AnswerJson.write(answer, List.of(notes), text);
        return JsonMapper.shared().readTree(text.toString());
    }

    private static List<String> names(JsonNode node) {
        return List.copyOf(node.propertyNames());
    }

    @Test
    void write_document_hasTheKeysOfTheFormatInTheirOrder() {
        JsonNode json = written(ANSWER);
        assertThat(names(json))
                .containsExactly(
                        "format", "case", "asOf", "currency", "futures", "seed", "warnings", "machines", "fleet");
        JsonNode machine = json.at("/machines/0");
        assertThat(names(machine))
                .containsExactly(
                        "id",
                        "carried",
                        "recommended",
                        "verdict",
                        "entries",
                        "ladder",
                        "costPerFlat",
                        "drivers",
                        "guesses",
                        "findOutFirst");
        JsonNode entry = machine.at("/entries/1");
        assertThat(names(entry))
                .containsExactly(
                        "id",
                        "when",
                        "startCost",
                        "neverFitted",
                        "cost",
                        "parts",
                        "counts",
                        "saving",
                        "levels",
                        "overNext",
                        "paybackHours",
                        "breakEvenFlats",
                        "breakEvenPrice",
                        "monthly",
                        "yearly");
        assertThat(names(entry.get("saving"))).containsExactly("mean", "standardError", "p10", "p50", "p90", "chance");
        assertThat(names(json.at("/machines/0/costPerFlat/fixes/0")))
                .containsExactly("name", "cash", "paid", "lost", "delayHours");
    }

    @Test
    void write_values_areWordsAndNumbersOfTheFormat() {
        JsonNode json = written(ANSWER);
        assertThat(json.get("format").asString()).isEqualTo("footing-answer/1");
        JsonNode machine = json.at("/machines/0");
        assertThat(machine.at("/recommended/when").asString()).isEqualTo("now");
        assertThat(machine.get("verdict").asString()).isEqualTo("pays");
        assertThat(machine.at("/entries/1/saving/mean").asDouble()).isEqualTo(1000.5);
        assertThat(machine.at("/entries/2/when").asString()).isEqualTo("worn");
        assertThat(machine.at("/entries/1/levels").findValuesAsString("counting"))
                .containsExactly("parts", "partsAndTime", "all");
        assertThat(machine.at("/entries/1/monthly/months").isInt()).isTrue();
    }

    @Test
    void write_whatDoesNotExist_isNull() {
        JsonNode carried = written(ANSWER).at("/machines/0/entries/0");
        for (String name :
                List.of("neverFitted", "overNext", "paybackHours", "breakEvenFlats", "breakEvenPrice", "monthly")) {
            assertThat(carried.get(name).isNull()).as(name).isTrue();
        }
        assertThat(written(ANSWER).at("/machines/0/drivers").isNull()).isTrue();
    }

    @Test
    void write_noFiniteNumber_isNull() {
        Answer odd = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless")
                .saves("A", "airless", When.NOW, saving(1, Double.NEGATIVE_INFINITY, Double.NaN, 0.5), 900)
                .answer();
        JsonNode saving = written(odd).at("/machines/0/entries/1/saving");
        assertThat(saving.get("p10").isNull()).isTrue();
        assertThat(saving.get("p90").isNull()).isTrue();
    }

    @Test
    void write_notesAndStopped_areWarnings() {
        Answer stopped =
                new Answer(ANSWER.of(), 10, 1, 0.8, "", false, List.of("own"), ANSWER.machines(), ANSWER.fleet());
        assertThat(written(stopped, "note").get("warnings").valueStream().map(JsonNode::asString))
                .startsWith("note", "own")
                .anyMatch(w -> w.startsWith("Stopped"));
    }
}
