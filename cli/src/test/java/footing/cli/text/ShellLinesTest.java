package footing.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShellLinesTest {
    @Test
    void of_anyWords_comeOutOfAShellAsTheyWere() throws IOException {
        List<String> words = List.of(
                "printf", "%s|", "plain", "with space", "it's", "$HOME", "a".repeat(150), "'b ".repeat(60), "last");
        List<String> lines = ShellLines.of(words);
        assertThat(lines).hasSizeGreaterThan(3).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(Lines.WIDTH));
        Process shell = new ProcessBuilder("sh", "-c", String.join("\n", lines)).start();
        String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).isEqualTo(String.join("|", words.subList(2, words.size())) + "|");
    }

    @Test
    void of_aShortCommand_isOneLine() {
        assertThat(ShellLines.of(List.of("footing", "check", "my case.yaml")))
                .containsExactly("    footing check 'my case.yaml'");
    }
}
