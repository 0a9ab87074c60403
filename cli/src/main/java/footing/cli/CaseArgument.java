package footing.cli;

import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.io.form.Nearest;
import footing.io.form.Problem;
import footing.io.trial.StatedTrial;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import picocli.CommandLine.Parameters;

/** The case a command is about: a file, or {@code -} for standard input. */
final class CaseArgument {
    private static final String STANDARD_INPUT = "-";
    private static final int MOST_CHARACTERS = 2_000_000;

    @Parameters(index = "0", paramLabel = "CASE", description = "The case file; - reads it from standard input.")
    private String file;

    /** A case named by other means than the first argument of a command. */
    static CaseArgument of(String file) {
        CaseArgument argument = new CaseArgument();
        argument.file = file;
        return argument;
    }

    String file() {
        return file;
    }

    /** The name to show in a command the user could run next. */
    String shownName() {
        return file.equals(STANDARD_INPUT) ? "CASE" : file;
    }

    /**
     * Reads the case; its warnings go to standard error.
     *
     * @throws BadInput if there is no case, with all that is wrong
     */
    Accepted read(Terminal terminal, PrintWriter err) throws BadInput, IOException {
        return accepted(reading(terminal), terminal, err);
    }

    /** The same for a command that uses the records whether a value is learned from them or not. */
    Accepted readForRecords(Terminal terminal, PrintWriter err) throws BadInput, IOException {
        return accepted(reading(terminal), w -> !w.message().equals(CaseFile.NOTHING_LEARNED), terminal, err);
    }

    /** A case, what reading it warned of, and the trials it names. */
    record Accepted(Case stated, List<String> warnings, List<StatedTrial> trials) {
        /**
         * Checks the id of a machine.
         *
         * @throws BadInput if there is none of that id
         */
        void checkMachine(String id) throws BadInput {
            List<String> ids = stated.machines().stream().map(Case.Machine::id).toList();
            if (!ids.contains(id)) {
                throw new BadInput(unknown("machine", id, ids));
            }
        }
    }

    static String unknown(String what, String name, List<String> known) {
        String advice = Nearest.advice(name, known);
        return "there is no " + what + " '" + name + "' here; there are " + String.join(", ", known)
                + (advice.startsWith("did you mean") ? "\n   " + advice : "");
    }

    static Accepted accepted(Reading reading, Terminal terminal, PrintWriter err) throws BadInput {
        return accepted(reading, w -> true, terminal, err);
    }

    private static Accepted accepted(Reading reading, Predicate<Problem> worth, Terminal terminal, PrintWriter err)
            throws BadInput {
        List<String> warnings =
                reading.warnings().stream().filter(worth).map(Problem::toString).toList();
        warnings.forEach(w -> err.println(terminal.letters().shown("warning: " + w)));
        if (reading.found().isEmpty()) {
            throw new BadInput("this case can't be used; wrong in it is\n"
                    + reading.problems().stream().map(Problem::toString).collect(Collectors.joining("\n")));
        }
        Case stated = reading.found().get();
        return new Accepted(stated, warnings, reading.trials());
    }

    private Reading reading(Terminal terminal) throws BadInput, IOException {
        if (file.equals(STANDARD_INPUT)) {
            byte[] bytes = terminal.in().readNBytes(MOST_CHARACTERS + 1);
            return CaseFile.read(new String(bytes, java.nio.charset.StandardCharsets.UTF_8), "standard input");
        }
        Path path = path();
        try {
            return CaseFile.read(path);
        } catch (NoSuchFileException e) {
            throw new BadInput("there is no file " + file);
        } catch (IOException e) {
            throw new BadInput("can't read " + file + (Files.isDirectory(path) ? ": it is a folder" : ""));
        }
    }

    private Path path() throws BadInput {
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new BadInput("'" + file + "' is not the name of a file");
        }
    }
}
