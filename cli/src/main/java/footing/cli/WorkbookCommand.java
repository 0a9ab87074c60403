package footing.cli;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.io.answer.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes an answer as a workbook. */
@Command(
        name = "workbook",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Writes the answer to a case as a workbook (XLSX) whose formulas recompute it, with a sheet in which"
                        + " inputs can be changed.")
final class WorkbookCommand implements Callable<Integer> {
    private static final String ENDING = ".xlsx";

    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.xlsx",
            required = true,
            description = "The workbook to write; one of that name is replaced.")
    private String output = "";

    @Option(names = "--machine", paramLabel = "ID", description = "Of one machine alone.")
    private @Nullable String machine;

    @Mixin
    private FuturesOptions run;

    private final Terminal terminal;

    WorkbookCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var commandLine = spec.commandLine();
        Path to = target();
        CaseArgument.Accepted read = argument.read(terminal, commandLine.getErr());
        if (machine != null) {
            read.checkMachine(machine);
        }
        Options options =
                new Options(run.futures(), run.seed(), Options.USUAL_THRESHOLD, true, Optional.ofNullable(machine));
        boolean written;
        try (Threads threads = Threads.usual();
                Progress progress = new Progress(commandLine.getErr(), terminal, System::nanoTime)) {
            Answer answer = Assessment.answer(read.stated(), options, threads, progress);
            written = answer.complete() && WorkbookFile.write(answer, read.warnings(), threads, progress, to);
        }
        commandLine.getErr().println(written ? "Wrote " + output : "footing: stopped; no workbook was written");
        return written ? 0 : Answering.STOPPED;
    }

    private Path target() throws BadInput {
        if (!output.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new BadInput("-o '" + output + "': a name that ends in " + ENDING + " would fit");
        }
        try {
            Path to = terminal.folder().resolve(output).toAbsolutePath();
            Path folder = to.getParent();
            if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(to)) {
                throw new BadInput("-o '" + output + "': there is no such folder to write to");
            }
            return to;
        } catch (InvalidPathException e) {
            throw new BadInput("-o '" + output + "' is not the name of a file");
        }
    }
}
