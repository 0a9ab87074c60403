package footing.cli;

import footing.cli.text.ShortTree;
import footing.cli.text.TreeText;
import footing.core.answer.Assessment;
import footing.core.answer.Explain;
import footing.core.answer.Explanation;
import footing.core.answer.Options;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.io.answer.Threads;
import footing.io.words.Figures;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a figure of an answer. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Takes a figure of an answer apart, down to the numbers somebody stated and what was counted.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Parameters(index = "1", paramLabel = "MACHINE", description = "The machine's id.")
    private String machine;

    @Parameters(index = "2", paramLabel = "PACKAGE", description = "The wheel package's id.")
    private String wheels;

    @Parameters(
            index = "3",
            paramLabel = "FIGURE",
            description = "One of ${COMPLETION-CANDIDATES}.",
            completionCandidates = Explainable.class)
    private String figure;

    @Option(
            names = "--when",
            paramLabel = "now|worn",
            description = "Changed over now, or when its sets are worn out; needed only where both are considered"
                    + " (now).")
    private @Nullable String when;

    @Option(names = "--all", description = "Print every number down to the last one, and whose each is.")
    private boolean all;

    @Mixin
    private FuturesOptions run;

    private final Terminal terminal;

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** The figures there are, for the help text. */
    static final class Explainable implements Iterable<String> {
        @Override
        public java.util.Iterator<String> iterator() {
            return Explain.FIGURES.iterator();
        }
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var commandLine = spec.commandLine();
        if (!Explain.FIGURES.contains(figure)) {
            throw new BadInput(CaseArgument.unknown("figure", figure, Explain.FIGURES));
        }
        CaseArgument.Accepted read = argument.read(terminal, commandLine.getErr());
        read.checkMachine(machine);
        When time = time(read.stated());
        OptionalInt asked = run.futures();
        int count = asked.isPresent() ? asked.getAsInt() : needed(read.stated());
        Explanation tree = Explain.figure(read.stated(), machine, wheels, time, figure, run.seed(), count);
        print(tree, read.stated().heading().currency());
        commandLine.getOut().println("On " + Figures.money(count) + " ways it could go, seed " + run.seed() + ".");
        return 0;
    }

    private void print(Explanation tree, String currency) {
        var out = spec.commandLine().getOut();
        out.print(
                all
                        ? TreeText.of(tree, currency, terminal.letters())
                        : ShortTree.of(tree, currency, terminal.letters()));
        out.println();
        if (!all) {
            out.println("Sums are rounded so that they add up to the cent; --all prints every number");
            out.println("they rest on, and whose it is.");
        }
    }

    /** The time asked for, or the only one there is. */
    private When time(Case stated) throws BadInput {
        ResolvedMachine resolved = Resolver.resolve(stated, stated.machine(machine));
        List<ResolvedMachine.Entry> entries =
                resolved.entries().stream().filter(e -> e.id().equals(wheels)).toList();
        if (entries.isEmpty()) {
            throw new BadInput(CaseArgument.unknown(
                    "wheel package",
                    wheels,
                    resolved.entries().stream()
                            .map(ResolvedMachine.Entry::id)
                            .distinct()
                            .toList()));
        }
        List<When> times = entries.stream().map(ResolvedMachine.Entry::when).toList();
        When asked = when == null ? null : parsed(when);
        if (asked == null) {
            return times.get(0);
        }
        if (!times.contains(asked)) {
            throw new BadInput("machine '" + machine + "' considers '" + wheels + "' only " + word(times.get(0)));
        }
        return asked;
    }

    private static When parsed(String word) throws BadInput {
        return switch (word) {
            case "now" -> When.NOW;
            case "worn" -> When.WORN;
            default -> throw new BadInput("--when '" + word + "': now or worn would fit");
        };
    }

    private static String word(When when) {
        return when == When.NOW ? "now" : "when worn (--when worn)";
    }

    private int needed(Case stated) {
        try (Threads threads = Threads.usual();
                Progress progress = new Progress(spec.commandLine().getErr(), terminal, System::nanoTime)) {
            Options quick =
                    new Options(OptionalInt.empty(), run.seed(), Options.USUAL_THRESHOLD, true, Optional.empty());
            return Assessment.answer(stated, quick, threads, progress).futures();
        }
    }
}
