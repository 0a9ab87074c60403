package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fitting.Finding;
import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Fits;
import footing.core.fleet.Case;
import footing.core.fleet.Position;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a machine considers once its measures have spoken. */
class FittingChoiceTest {
    private static final String ASKED = "consider: [air-24, air-24-s, sealant-24, foam-24, airless-24]";

    private static String fleet() throws IOException {
        return Files.readString(Path.of("../cases/quillbrook.yaml"))
                .replace(ASKED, "consider: fits")
                .replace(", upcharge: {airless-24: 905}", "");
    }

    private static List<String> considered(String text) {
        return CaseFileTest.accepted(CaseFile.read(text, "case.yaml")).machine("E1").consider().stream()
                .map(Case.WheelPackage::id)
                .toList();
    }

    @Test
    void consider_whatFits_leavesOutTheOtherPattern() throws IOException {
        assertThat(considered(fleet()))
                .containsExactlyInAnyOrder("air-24", "air-24-s", "sealant-24", "foam-24", "airless-24");
    }

    /** The wheels on it stay, whatever the tape says: they are there. */
    @Test
    void consider_nothingFits_leavesTheCarriedAndWhatIsMadeOfIt() throws IOException {
        String wrong = fleet().replaceFirst(
                        "hub: \\{drive: \\{bolts: 5, circle: 4.5 in, seat: cone\\}",
                        "hub: {drive: {bolts: 6, circle: 4.5 in, seat: cone}");

        assertThat(considered(wrong)).containsExactlyInAnyOrder("air-24", "air-24-s", "sealant-24");
    }

    @Test
    void consider_unknownDimension_isConsideredAndSaidToBeOpen() throws IOException {
        String unknown = fleet().replaceFirst("clearance: \\{drive: 1.5 in, caster: 1.25 in\\}", "slopeLimit: 15");
        Reading reading = CaseFile.read(unknown, "case.yaml");

        assertThat(considered(unknown)).contains("airless-24");
        assertThat(reading.warnings().toString()).contains("not known to fit, and considered all the same");
    }

    /** Nothing but the class, the sizes on the sidewalls and a taped bolt pattern. */
    @ParameterizedTest
    @ValueSource(strings = {"walk-behind-hydrostatic", "stand-on", "zero-turn-compact", "zero-turn"})
    void fit_classSizesAndTapedPattern_leaveTwoChecksAWheelAtMost(String kind) throws IOException {
        String text = Files.readString(Path.of("../cases/from-the-catalog.yaml"))
                .replace("packages:", """
                        assemblies:
                          spoked: {kind: airless, position: drive, size: 20x10-10, price: 500, life: 1500, bolts: 4, circle: 4 in}
                          lasting: {kind: solid, position: caster, size: 11x4-5, price: 70, life: 1000}
                        packages:
                          new: {drive: spoked, caster: lasting}""")
                .replaceFirst(
                        "id: left, kind: stand-on,",
                        "id: left, kind: " + kind + ", hub: {drive: {bolts: 4, circle: 4 in}},");
        Case stated = CaseFileTest.accepted(CaseFile.read(text, "case.yaml"));
        Case.WheelPackage wanted = stated.packages().stream()
                .filter(p -> p.id().equals("new"))
                .findFirst()
                .orElseThrow();
        Fit fit = Fit.of(FitQuestion.of(stated, "left", wanted));

        assertThat(fit.verdict()).isEqualTo(Fits.CHECK);
        for (Position position : Position.values()) {
            assertThat(fit.open().stream().filter(o -> o.position() == position))
                    .hasSizeLessThanOrEqualTo(2);
        }
        assertThat(fit.findings().stream()
                        .filter(f -> f.verdict() == Fits.CHECK)
                        .map(Finding::settle))
                .doesNotContainNull();
    }
}
