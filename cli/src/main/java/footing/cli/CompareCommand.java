package footing.cli;

import footing.cli.text.CompareText;
import footing.core.answer.Options;
import footing.core.compare.Difference;
import footing.core.fleet.Case;
import footing.io.answer.DifferenceJson;
import footing.io.answer.Threads;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two versions of a case. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Compares two versions of a case: what changed, what the answer was and is, and what did it.")
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "The earlier case file; - reads standard input.")
    private String before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "The later case file; - reads standard input.")
    private String after;

    @Mixin
    private FuturesOptions run;

    @Option(names = "--json", description = "Print one JSON document, footing-comparison/1, and nothing else.")
    private boolean json;

    private final Terminal terminal;

    CompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        var err = spec.commandLine().getErr();
        OptionalInt count = run.futures();
        if (before.equals("-") && after.equals("-")) {
            throw new BadInput("only one of the two cases can come from standard input");
        }
        Case was = CaseArgument.of(before).read(terminal, err).stated();
        Case is = CaseArgument.of(after).read(terminal, err).stated();
        checkCurrencies(was.heading().currency(), is.heading().currency());
        Difference difference = difference(was, is, count);
        if (json) {
            DifferenceJson.write(difference, out);
        } else {
            out.print(CompareText.of(difference, terminal.letters()));
        }
        out.flush();
        if (!difference.complete()) {
            err.println("footing: stopped; printed is what was known by then");
        }
        return difference.complete() ? 0 : Answering.STOPPED;
    }

    private static void checkCurrencies(String was, String is) throws BadInput {
        if (!was.equals(is)) {
            throw new BadInput(
                    "one case is in " + was + ", the other in " + is + "; savings in two currencies can't be compared");
        }
    }

    private Difference difference(Case was, Case is, OptionalInt count) {
        Options options = new Options(count, run.seed(), Options.USUAL_THRESHOLD, true, Optional.empty());
        try (Threads threads = Threads.usual();
                Progress progress = new Progress(spec.commandLine().getErr(), terminal, System::nanoTime)) {
            return Difference.between(was, is, options, threads, progress);
        }
    }
}
