package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.io.casefile.CaseFile;
import footing.io.edit.Edited;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SharpeningTest {
    private static String text;
    private static Case fleet;

    @BeforeAll
    static void readExample() throws IOException {
        text = Files.readString(Path.of("../cases/quillbrook.yaml"));
        fleet = CaseFile.read(text, "x").found().orElseThrow();
    }

    private static Edited sent(String form, Map<String, String> typed) {
        return Sharpening.of(form, fleet, typed).orElseThrow().edit(text);
    }

    private static Case stated(Edited edited) {
        assertThat(edited.problems()).isEmpty();
        return ((Edited.Changed) edited).stated();
    }

    @Test
    void units_si_isSaid() {
        assertThat(stated(sent("units", Map.of("units", "si"))).heading().si()).isTrue();
    }

    @Test
    void tax_notStatedYet_isAdded() {
        Case taxed = stated(sent("tax", Map.of("rate", "24 %", "schedule", "60 %, 40 %")));
        assertThat(taxed.money().tax()).isNotNull();
        assertThat(SharpenView.of(taxed, null).value("tax.schedule")).isEqualTo("60 %, 40 %");
    }

    @Test
    void tax_sharesAboveWhole_isRefused() {
        assertThat(sent("tax", Map.of("rate", "24 %", "schedule", "60 %, 60 %")).problems())
                .isNotEmpty();
    }

    @Test
    void loan_emptyRate_meansCash() {
        assertThat(stated(sent("loan", Map.of("rate", ""))).money().loan()).isNull();
    }

    @Test
    void spare_newFix_takesItsShareOfAll() {
        Case spared = stated(sent("spare", Map.of("crew", "school", "share", "40 %", "delay", "20 min", "cost", "22")));
        var fixes = spared.crew("school").fixes();
        assertThat(fixes).hasSize(4);
        assertThat(fixes.stream()
                        .mapToDouble(f ->
                                f.numbers().get(Key.FIX_SHARE).orElseThrow().likely())
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(fixes.get(0).numbers().get(Key.FIX_SHARE).orElseThrow().likely())
                .isCloseTo(0.48, within(1e-12));
        assertThat(SharpenView.of(spared, "C1").spares()).containsExactly(new SharpenView.Spare("school", true));
    }

    @Test
    void of_unknownForm_isEmpty() {
        assertThat(Sharpening.of("other", fleet, Map.of())).isEmpty();
    }
}
