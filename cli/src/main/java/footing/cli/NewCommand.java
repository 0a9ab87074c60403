package footing.cli;

import footing.io.interview.Interview;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks the eight questions and writes a case. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Asks eight questions about one contractor's mowers and writes a case file from the answers."
                + " Nobody has to know them all: Enter or ? = don't know leaves a guess, which the file names as one.")
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The case file to write.")
    private String file;

    @Option(names = "--force", description = "Write over a file of this name.")
    private boolean force;

    private final Terminal terminal;
    private final Clock clock;

    NewCommand(Terminal terminal) {
        this(terminal, Clock.system(ZoneId.systemDefault()));
    }

    NewCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        PrintWriter out = spec.commandLine().getOut();
        Path path = path();
        Map<String, String> answers = new Interviewer(terminal, out).ask();
        write(path, Interview.caseText(answers, LocalDate.now(clock)));
        say(out, "");
        say(out, "Wrote " + file + ".");
        sayGuesses(out, Interview.guesses(answers));
        say(out, "Next: ./footing assess " + quoted(file));
        return 0;
    }

    /** Checked before anything is asked, so that nobody answers in vain. */
    private Path path() throws BadInput {
        Path path;
        try {
            path = terminal.folder().resolve(file);
        } catch (InvalidPathException e) {
            throw new BadInput("'" + file + "' is not the name of a file");
        }
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path)) {
            throw new BadInput(file + " is a folder; name a file in it");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadInput("there is no folder " + folder + "; make it first, or name a file elsewhere");
        }
        if (Files.exists(path) && !force) {
            throw new BadInput(alreadyThere());
        }
        return path;
    }

    private void write(Path path, String text) throws BadInput, IOException {
        OpenOption[] options = force
                ? new OpenOption[] {
                    StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE
                }
                : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
        try {
            Files.writeString(path, text, StandardCharsets.UTF_8, options);
        } catch (FileAlreadyExistsException e) {
            throw new BadInput(alreadyThere());
        } catch (NoSuchFileException e) {
            throw new BadInput("the folder of " + file + " is gone");
        }
    }

    private String alreadyThere() {
        return file + " is there already; name another file, or write over it with --force";
    }

    private void sayGuesses(PrintWriter out, List<Interview.Taken> guesses) {
        if (guesses.isEmpty()) {
            say(
                    out,
                    "Every answer is yours. What nobody was asked stands in the file as a guess, each with its source.");
            return;
        }
        say(out, guesses.size() == 1 ? "One answer is a guess:" : guesses.size() + " answers are guesses:");
        guesses.forEach(g -> say(out, "  " + g.field().label() + ": " + g.shown() + " (" + g.from() + ")"));
        say(out, "They are marked in the file; write better numbers over them.");
    }

    private void say(PrintWriter out, String line) {
        out.println(terminal.letters().shown(line));
    }

    /** Quoted for a shell where it has to be. */
    private static String quoted(String name) {
        return name.matches("[\\w./@%+,:=-]+") ? name : "'" + name.replace("'", "'\\''") + "'";
    }
}
