package footing.cli;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import footing.io.paper.Paper;
import footing.io.proposal.Proposal;
import footing.io.trial.TrialQuote;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the answer to a case. */
@Command(
        name = "proposal",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Answers a case on paper: a PDF with the answer on page one, the workings behind it, an order sheet"
                        + " and a list of what comes after.")
final class ProposalCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Option(names = "-o", paramLabel = "FILE", required = true, description = "The PDF to write.")
    private String file = "";

    @Option(names = "--machine", paramLabel = "ID", description = "Print one machine alone.")
    private @Nullable String machine;

    @Mixin
    private PaperFile on;

    @Option(names = "--csv", paramLabel = "DIR", description = "Write every table into this folder as well.")
    private @Nullable String csv;

    @Mixin
    private FuturesOptions run;

    @Option(names = "--quick", description = "Leave out what moves the answer and what to find out first.")
    private boolean quick;

    @Mixin
    private TrialsOption trials;

    private final Terminal terminal;

    ProposalCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var commandLine = spec.commandLine();
        Printing printing = new Printing(terminal, commandLine.getErr());
        Path pdf = on.free(terminal, file);
        Path folder = csv == null ? null : PaperFile.path(terminal, csv);
        CaseArgument.Accepted read =
                trials.added(argument.read(terminal, commandLine.getErr()), terminal, commandLine.getErr());
        if (machine != null) {
            read.checkMachine(machine);
        }
        Paper size = on.size(read.stated());
        List<TrialQuote> quotes = TrialsOption.quotes(read);
        Answer answer = answer(read.stated(), printing);
        if (!answer.complete() || !printing.print(new Proposal.Printed(answer, size, quotes), pdf)) {
            commandLine.getErr().println("footing: stopped; nothing was written");
            return Answering.STOPPED;
        }
        commandLine.getOut().println("Wrote " + terminal.letters().shown(file));
        if (folder != null) {
            int tables = printing.tables(answer, folder, on.force());
            commandLine
                    .getOut()
                    .println("Wrote " + tables + " tables into "
                            + terminal.letters().shown(String.valueOf(folder)));
        }
        return 0;
    }

    private Answer answer(Case stated, Printing printing) throws BadInput {
        boolean many = machine == null && stated.machines().size() > printing.mostWhole();
        if (many && !quick) {
            spec.commandLine()
                    .getErr()
                    .println("With " + stated.machines().size() + " machines the proposal is shortened and rests on a"
                            + " quick answer; --machine ID prints one in full.");
        }
        Options options = new Options(
                run.futures(), run.seed(), Options.USUAL_THRESHOLD, quick || many, Optional.ofNullable(machine));
        try (Threads threads = Threads.usual();
                Progress progress = new Progress(spec.commandLine().getErr(), terminal, System::nanoTime)) {
            return Assessment.answer(stated, options, threads, progress);
        }
    }
}
