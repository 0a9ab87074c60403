package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.io.casefile.CaseFile;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class FieldViewTest {
    private static String text;
    private static Case fleet;

    @BeforeAll
    static void readExample() throws IOException {
        text = Files.readString(Path.of("../cases/quillbrook.yaml"));
        fleet = CaseFile.read(text, "x").found().orElseThrow();
    }

    private static FieldView field(String path) {
        return FieldView.of(Inputs.find(fleet, path).orElseThrow(), fleet, false);
    }

    @Test
    void of_threePoint_hasThreeBoxesInWordsAndACurve() {
        FieldView flats = field("machines.E1.flatsPerSeason");
        assertThat(flats.boxes()).extracting(FieldView.Box::label).containsExactly("good year", "usual", "bad year");
        assertThat(flats.boxes()).extracting(FieldView.Box::value).containsExactly("3", "6", "11");
        assertThat(flats.curve()).isNotNull();
        assertThat(flats.provenance()).isEqualTo("yours");
    }

    @Test
    void of_longDelay_isInMinutesUnlessHoursAreShort() {
        assertThat(field("crews.estates.fixes[1].delay").boxes())
                .extracting(FieldView.Box::value)
                .containsExactly("70 min", "115 min", "200 min");
        assertThat(field("crews.estates.fixes[3].delay").boxes())
                .extracting(FieldView.Box::value)
                .containsExactly("8 h", "12 h", "20 h");
    }

    @Test
    void of_default_isAGuessWithItsReason() {
        FieldView premium = field("crews.estates.overtimePremium");
        assertThat(premium.guess()).isTrue();
        assertThat(premium.provenance()).startsWith("a guess: ");
        assertThat(premium.canForget()).isFalse();
    }

    @Test
    void of_everyInput_isTakenBackAsItIsShown() {
        Map<String, String> ids = new java.util.HashMap<>();
        for (InForce n : footing.io.words.Origins.inForce(
                fleet, fleet.machines().stream().map(Case.Machine::id).toList())) {
            FieldView field = FieldView.of(n, fleet, false);
            assertThat(ids.put(field.id(), field.path())).as(field.path()).isNull();
            String shown = field.boxes().stream()
                    .map(FieldView.Box::value)
                    .filter(v -> !v.isEmpty())
                    .collect(Collectors.joining(" / "));
            if (field.path().contains("fixes[") && field.path().endsWith("share")) {
                continue;
            }
            Edited edited = CaseEdit.set(text, field.path(), shown);
            assertThat(edited.problems()).as(field.path() + ": " + shown).isEmpty();
        }
    }

    @Test
    void refused_field_keepsWhatWasTyped() {
        FieldView refused = field("crews.estates.people").refused(Map.of("value", "lots"), List.of("no"));
        assertThat(refused.boxes().get(0).value()).isEqualTo("lots");
        assertThat(refused.isWrong()).isTrue();
    }
}
