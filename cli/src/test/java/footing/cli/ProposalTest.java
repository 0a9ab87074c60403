package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProposalTest {
    @TempDir
    private Path folder;

    private Run run(String... more) {
        String[] words = new String[more.length + 4];
        System.arraycopy(new String[] {"proposal", Run.ONE_MACHINE, "--futures", "200"}, 0, words, 0, 4);
        System.arraycopy(more, 0, words, 4, more.length);
        return Run.in(folder, "", Letters.UTF8, words);
    }

    @Test
    void proposal_goodCase_writesPdfAndTables() throws IOException {
        Run run = run("-o", "out.pdf", "--csv", "tables", "--quick");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Wrote out.pdf", "tables");
        assertThat(Files.readAllBytes(folder.resolve("out.pdf")))
                .startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(folder.resolve("tables/machines.csv")).exists();
    }

    @Test
    void proposal_fileThereAlready_isKeptUnlessForced() throws IOException {
        Files.writeString(folder.resolve("out.pdf"), "mine");
        Run run = run("-o", "out.pdf", "--quick");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("out.pdf is there already", "--force");
        assertThat(folder.resolve("out.pdf")).hasContent("mine");
        assertThat(run("-o", "out.pdf", "--quick", "--force").code()).isZero();
        assertThat(Files.size(folder.resolve("out.pdf"))).isGreaterThan(10_000);
    }

    @Test
    void proposal_whatDoesNotFit_isCodeTwoAndWritesNothing() throws IOException {
        assertThat(run("-o", "out.pdf", "--paper", "legal").code()).isEqualTo(2);
        assertThat(run("-o", "out.pdf", "--machine", "nobody").code()).isEqualTo(2);
        assertThat(run("-o", "nowhere/out.pdf").code()).isEqualTo(2);
        assertThat(run("-o", ".").code()).isEqualTo(2);
        assertThat(run().code()).isEqualTo(2);
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }
}
