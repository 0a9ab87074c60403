package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.ground.MachineGround;
import footing.core.ground.Marking;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GroundWordsTest {
    private static MachineGround ground(String file, String machine) throws IOException {
        Case stated = CaseFile.read(Path.of("../cases", file)).found().orElseThrow();
        return MachineGround.of(stated, machine);
    }

    @Test
    void line_airlessOnE1_saysPressureHoldAndHeight() throws IOException {
        MachineGround ground = ground("quillbrook.yaml", "E1");

        String line = ground.packages().stream()
                .filter(p -> p.wheels().id().equals("airless-24"))
                .findFirst()
                .flatMap(p -> new GroundWords(false).line(ground.carried(), p))
                .orElseThrow();
        assertThat(line)
                .contains("drives press ", " psi")
                .containsPattern("would slide across a wet slope from somewhere in \\d to \\d+ deg")
                .contains("axles rise +0.3 in and +0.2 in");
    }

    @Test
    void ground_caseWithoutMeasures_isSilent() throws IOException {
        assertThat(ground("one-machine.yaml", "mower").isSilent()).isTrue();
        assertThat(ground("quillbrook.yaml", "E1").isSilent()).isFalse();
    }

    @Test
    void marking_everyWord_isItsOwn() {
        assertThat(Arrays.stream(Marking.values()).map(GroundWords::marking)).doesNotHaveDuplicates();
    }

    @Test
    void caution_statedLimit_isNamedBesideTheUsualOne() throws IOException {
        assertThat(SlopeCaution.of(ground("quillbrook.yaml", "C2")))
                .contains("no permission", "15 degrees", "12 degrees");
        assertThat(SlopeCaution.of(ground("quillbrook.yaml", "E1"))).contains("No limit is stated for E1");
    }

    @Test
    void lacking_path_saysWhatToMeasure() {
        assertThat(Lacking.what("assemblies.x.offset")).contains("mounting face");
        assertThat(Lacking.what("assemblies.x.print")).contains("painted print");
        assertThat(Lacking.what("machines.m.deck.hangers.rear")).contains("rear hangers");
        assertThat(Lacking.what("machines.m.centerOfGravity.height")).contains("height of center");
    }
}
