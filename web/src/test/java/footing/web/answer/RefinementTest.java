package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RefinementTest {
    private static final String MOWER = "mower";
    private Refinement refinement;

    @BeforeEach
    void readExample() throws IOException {
        Case stated = CaseFile.read(Files.readString(Path.of("../cases/one-machine.yaml")), "x")
                .found()
                .orElseThrow();
        refinement = new Refinement(stated);
    }

    /** As happens when a change is undone before the work it stopped has noticed. */
    @Test
    void putBack_newRoundFoundItTaken_isLeftToTheNewRound() {
        Watch first = refinement.begin(MOWER);
        assertThat(refinement.take(MOWER)).isTrue();
        refinement.stop();
        Watch second = refinement.begin(MOWER);
        assertThat(refinement.take(MOWER)).isFalse();

        Watch left = refinement.putBack(MOWER, first).orElseThrow();

        assertThat(left.stopped()).isFalse();
        assertThat(second.stopped()).isFalse();
        assertThat(refinement.take(MOWER)).isTrue();
    }

    @Test
    void putBack_stoppedOrNotOvertaken_leavesNothingToDo() {
        Watch watch = refinement.begin(MOWER);
        refinement.take(MOWER);
        assertThat(refinement.putBack(MOWER, watch)).isEmpty();

        refinement.take(MOWER);
        refinement.stop();
        assertThat(refinement.putBack(MOWER, watch)).isEmpty();
    }
}
