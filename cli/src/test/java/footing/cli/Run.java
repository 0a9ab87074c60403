package footing.cli;

import footing.cli.text.Letters;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** One run of the program, with what it printed. */
record Run(int code, String out, String err) {
    static final Path CASES = Path.of("..", "cases").toAbsolutePath().normalize();
    static final String ONE_MACHINE = CASES.resolve("one-machine.yaml").toString();
    static final String NINE_MACHINES = CASES.resolve("quillbrook.yaml").toString();

    static Run of(String... args) {
        return in(Path.of("."), "", Letters.ASCII, args);
    }

    static Run in(Path folder, String input, Letters letters, String... args) {
        return in(folder, input, letters, new Stop(), args);
    }

    static Run in(Path folder, String input, Letters letters, Stop stop, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        var in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        Terminal terminal = new Terminal(letters, false, in, folder, stop);
        int code = Main.commandLine(terminal, new PrintWriter(out), new PrintWriter(err))
                .execute(args);
        return new Run(code, out.toString(), err.toString());
    }

    List<String> lines() {
        return out.lines().toList();
    }
}
