package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class FailuresTest {
    private static final Terminal TERMINAL =
            new Terminal(Letters.ASCII, false, InputStream.nullInputStream(), Path.of("."), new Stop());

    private final StringWriter err = new StringWriter();

    private int handled(boolean trace, Exception e) {
        CommandLine commandLine = Main.commandLine(TERMINAL, new PrintWriter(new StringWriter()), new PrintWriter(err));
        return new Failures(TERMINAL, trace).handleExecutionException(e, commandLine, commandLine.parseArgs("schema"));
    }

    @Test
    void handle_theUnexpected_isASentenceAndCodeOne() {
        assertThat(handled(false, new IllegalStateException("boom"))).isEqualTo(1);
        assertThat(err.toString()).contains("boom", "FOOTING_DEBUG=1").doesNotContain("\tat ");
    }

    @Test
    void handle_theUnexpectedWithTrace_showsWhere() {
        handled(true, new IllegalStateException("boom"));
        assertThat(err.toString()).contains("\tat footing.cli.FailuresTest");
    }

    @Test
    void run_outputThatCannotBeWritten_isCodeOne() {
        Writer full = new Writer() {
            @Override
            public void write(char[] letters, int from, int count) throws IOException {
                throw new IOException("no space left");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        int code = Main.commandLine(TERMINAL, new PrintWriter(full), new PrintWriter(err))
                .execute("schema");
        assertThat(code).isEqualTo(1);
        assertThat(err.toString()).contains("could not be written");
    }
}
