package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CaseFileTest {
    @Test
    void quillbrook_readsWithoutWarnings() throws Exception {
        Reading reading = CaseFile.read(Path.of("../cases/quillbrook.yaml"));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings()).isEmpty();
    }
}
