package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardTest {
    @TempDir
    Path folder;

    private Run card(String... args) {
        return Run.in(folder, "", Letters.ASCII, args);
    }

    @Test
    void card_ofACase_isWrittenOnceUnlessForced() throws IOException {
        Path example = Path.of(Run.NINE_MACHINES).toAbsolutePath();
        Run run = card("card", "visor.pdf", "--case", example.toString(), "--paper", "a4");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("Wrote visor.pdf");
        assertThat(Files.readAllBytes(folder.resolve("visor.pdf"))).startsWith('%', 'P', 'D', 'F');
        Run again = card("card", "visor.pdf");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("is there already");
        assertThat(card("card", "visor.pdf", "--force").code()).isZero();
    }

    @Test
    void card_ofNoSuchCaseOrPaper_isRefused() {
        assertThat(card("card", "visor.pdf", "--case", "nope.yaml").code()).isEqualTo(2);
        assertThat(card("card", "visor.pdf", "--paper", "tabloid").err()).contains("letter or a4 would fit");
        assertThat(folder.resolve("visor.pdf")).doesNotExist();
    }
}
