package footing.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FileNameTest {
    @Test
    void of_anyName_fitsAnyFileSystem() {
        assertThat(FileName.of("Größe: ½ / <x>\"..\\")).matches("[a-z0-9-]+");
        assertThat(FileName.of("…")).isEqualTo("case");
        assertThat(FileName.of("a".repeat(500))).hasSize(60);
    }
}
