package footing.cli;

import footing.cli.text.FollowText;
import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.fleet.Case;
import footing.core.follow.FollowUp;
import footing.core.follow.Forecast;
import footing.core.follow.Forecaster;
import footing.core.follow.Warranties;
import footing.core.follow.Warranty;
import footing.core.records.Log;
import footing.io.answer.Threads;
import footing.io.follow.FollowJson;
import footing.io.follow.ForecastFile;
import footing.io.follow.LinkedRecords;
import footing.io.form.Problem;
import footing.io.records.Records;
import footing.io.records.RecordsFile;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Keeps a forecast of a case, and holds the last one kept against what the records tell since. */
@Command(
        name = "follow",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Holds what was forecast of a case against what came: flats, sets, hours down, money paid, machine"
                        + " by machine and for the fleet, and how far each set is into its warranty.",
        footer = {
            "",
            "Begin with --keep, which puts a forecast beside the case file; follow up when the records have grown.",
        })
final class FollowCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Option(names = "--keep", description = "Make a forecast by what the answer advises, and keep it.")
    private boolean keep;

    @Option(
            names = "--records",
            paramLabel = "FILE",
            description = "The records (.csv or .xlsx), if the case does not name them.")
    private @Nullable String records;

    @Option(names = "--on", paramLabel = "DATE", description = "The day it is looked at; today if left out.")
    private @Nullable LocalDate on;

    @Option(names = "--json", description = "Print one JSON document, footing-follow/1, and nothing else.")
    private boolean json;

    private final Terminal terminal;
    private final Clock clock;

    FollowCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        var err = spec.commandLine().getErr();
        if (argument.file().equals("-")) {
            throw new BadInput("a forecast lies beside its case, so the case must be a file");
        }
        if (keep && json) {
            throw new BadInput("--keep and --json don't go together: run once with each");
        }
        Case stated = argument.readForRecords(terminal, err).stated();
        Path file = terminal.folder().resolve(argument.file());
        Path forecasts = ForecastFile.beside(file);
        LocalDate today = on == null ? LocalDate.now(clock) : on;
        if (keep) {
            if (!keep(stated, forecasts, today)) {
                err.println("footing: stopped; no forecast was kept");
                return Answering.STOPPED;
            }
            out.println("Kept a forecast of " + today + " in " + forecasts.getFileName());
            return 0;
        }
        List<Forecast> kept = kept(forecasts);
        Log log = log(file);
        FollowUp up = FollowUp.of(kept.get(kept.size() - 1), log);
        List<Warranty> warranties = Warranties.of(stated, log, today);
        if (json) {
            FollowJson.write(up, warranties, out);
        } else {
            out.print(FollowText.of(up, warranties, terminal.letters()));
        }
        return 0;
    }

    private boolean keep(Case stated, Path forecasts, LocalDate today) throws BadInput, IOException {
        List<Forecast> before = read(forecasts);
        Forecast made;
        try (Threads threads = Threads.usual();
                Progress progress = new Progress(spec.commandLine().getErr(), terminal, System::nanoTime)) {
            Answer answer = Assessment.answer(stated, Options.usual().quickly(), threads, progress);
            if (!answer.complete()) {
                return false;
            }
            made = Forecaster.of(answer, Map.of(), today);
        }
        // Whole or not at all: earlier forecasts can't be made again.
        Path fresh = forecasts.resolveSibling(forecasts.getFileName() + ".new");
        try (Writer to = Files.newBufferedWriter(fresh)) {
            ForecastFile.write(ForecastFile.with(before, made), to);
        }
        Files.move(fresh, forecasts, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        return true;
    }

    private List<Forecast> kept(Path forecasts) throws BadInput, IOException {
        List<Forecast> kept = read(forecasts);
        if (kept.isEmpty()) {
            throw new BadInput("no forecast of this case is kept in " + forecasts.getFileName() + "; 'footing follow "
                    + argument.file() + " --keep' makes one to follow up later");
        }
        return kept;
    }

    private static List<Forecast> read(Path forecasts) throws BadInput, IOException {
        ForecastFile.Kept kept = ForecastFile.read(forecasts);
        if (!kept.problems().isEmpty()) {
            throw new BadInput("the forecasts kept can't be used; wrong in them is\n" + told(kept.problems()));
        }
        return kept.forecasts();
    }

    private Log log(Path file) throws BadInput, IOException {
        Path from = records == null ? linked(file) : named(records);
        if (!Files.isRegularFile(from)) {
            throw new BadInput("there are no records " + from.getFileName() + " to hold the forecast against");
        }
        Records read = RecordsFile.read(from, null);
        if (!read.unread().isEmpty()) {
            throw new BadInput("these records can't be used; wrong with them is\n" + told(read.unread()));
        }
        read.refused()
                .forEach(p ->
                        spec.commandLine().getErr().println(terminal.letters().shown("left out: " + p)));
        return read.log();
    }

    private static Path linked(Path file) throws BadInput, IOException {
        return LinkedRecords.of(file)
                .orElseThrow(() -> new BadInput("the case names no records: add a line such as 'records: log.csv',"
                        + " or give --records FILE"));
    }

    private Path named(String name) throws BadInput {
        try {
            return terminal.folder().resolve(name);
        } catch (InvalidPathException e) {
            throw new BadInput("'" + name + "' is not the name of a file");
        }
    }

    private static String told(List<Problem> problems) {
        return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }
}
