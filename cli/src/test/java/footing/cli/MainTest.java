package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    @Test
    void version_asked_namesTheProgramAndNothingElse() {
        Run run = Run.of("--version");
        assertThat(run.code()).isZero();
        assertThat(run.out()).matches("footing \\S+\\R");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void help_asked_goesToStandardOutputAndNamesTheCommands() {
        Run run = Run.of("--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Usage: footing").contains("assess", "demo", "check", "explain", "schema");
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess", "demo", "check", "explain", "schema"})
    void help_ofACommand_fitsTheTerminal(String command) {
        Run run = Run.of(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void unknownOption_withASpaceInIt_isNamedOnStandardErrorWithCodeTwo() {
        Run run = Run.of("--no such");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("'--no such'").contains("Usage: footing");
    }

    @Test
    void unknownCommand_nearAKnownOne_isSuggested() {
        Run run = Run.of("asses", "x.yaml");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("assess");
    }

    @Test
    void noCommand_given_isAnErrorOfUse() {
        Run run = Run.of();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("name a command");
    }

    @Test
    void letters_bySettings_followTheFirstThatCounts() {
        assertThat(Terminal.letters(Map.of())).isEqualTo(Letters.ASCII);
        assertThat(Terminal.letters(Map.of("LANG", "en_US.UTF-8"))).isEqualTo(Letters.UTF8);
        assertThat(Terminal.letters(Map.of("LANG", "en_US.UTF-8", "LC_ALL", "C")))
                .isEqualTo(Letters.ASCII);
        assertThat(Terminal.letters(Map.of("LC_ALL", "", "LANG", "C.utf8"))).isEqualTo(Letters.UTF8);
    }
}
