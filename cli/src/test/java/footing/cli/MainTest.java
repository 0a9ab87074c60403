package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
    }

    @Test
    void version_asked_namesTheProgramAndNothingElse() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).matches("footing \\S+\\R");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void help_asked_goesToStandardOutput() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).startsWith("Usage: footing");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void unknownOption_withASpaceInIt_isNamedOnStandardErrorWithCodeTwo() {
        assertThat(run("--no such")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("'--no such'").contains("Usage: footing");
    }

    @Test
    void noCommand_given_isAnErrorOfUse() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("name a command");
    }
}
