package footing.cli;

import footing.cli.text.TrialText;
import footing.core.trial.TrialResult;
import footing.io.form.Problem;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialJson;
import footing.io.trial.TrialReading;
import footing.io.trial.TrialSchema;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a field trial. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Judges a side-by-side field trial: better, alike, or not enough runs to tell.")
final class TrialCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "FILE",
            description = "The trial file (YAML), or a sheet (CSV) with one row a run.")
    private @Nullable String file;

    @Option(names = "--json", description = "Print one JSON document, footing-trial-result/1, and nothing else.")
    private boolean json;

    @Option(names = "--schema", description = "Print the JSON Schema of trial files.")
    private boolean schema;

    private final Terminal terminal;

    TrialCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (schema) {
            out.println(TrialSchema.json());
            return 0;
        }
        if (file == null) {
            throw new BadInput("name a trial file, or the command plan");
        }
        TrialReading.Accepted read = accepted(file, terminal);
        StatedTrial stated = read.stated();
        TrialResult result = TrialResult.of(stated.trial());
        PrintWriter err = spec.commandLine().getErr();
        read.warnings().forEach(w -> err.println(terminal.letters().shown("warning: " + w)));
        if (json) {
            out.println(TrialJson.of(stated, result, read.warnings()));
        } else {
            out.print(TrialText.of(stated, result, terminal.letters()));
        }
        return 0;
    }

    /**
     * Reads a trial.
     *
     * @throws BadInput if there is none, with all that is wrong
     */
    static TrialReading.Accepted accepted(String file, Terminal terminal) throws BadInput, IOException {
        Path path;
        try {
            path = terminal.folder().resolve(file);
        } catch (InvalidPathException e) {
            throw new BadInput("'" + file + "' is not the name of a file");
        }
        TrialReading reading;
        try {
            reading = TrialFile.read(path);
        } catch (NoSuchFileException e) {
            throw new BadInput("there is no file " + file);
        } catch (IOException e) {
            throw new BadInput("can't read " + file + (Files.isDirectory(path) ? ": it is a folder" : ""));
        }
        if (reading instanceof TrialReading.Accepted accepted) {
            return accepted;
        }
        List<Problem> problems = ((TrialReading.Refused) reading).problems();
        throw new BadInput("this trial can't be used; wrong in it is\n"
                + problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    }
}
