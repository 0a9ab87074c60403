package footing.cli;

import footing.cli.text.NextSteps;
import footing.cli.text.TrialQuoteText;
import footing.core.answer.Answer;
import footing.core.answer.Options;
import footing.io.trial.TrialQuote;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers a case. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Answers a case: which wheels each machine should run, what it is worth and how sure that is.")
final class AssessCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Mixin
    private AnswerOptions asked;

    @Option(names = "--machine", paramLabel = "ID", description = "Answer one machine alone, with all there is to say.")
    private @Nullable String machine;

    @Mixin
    private TrialsOption trials;

    private final Terminal terminal;

    AssessCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var commandLine = spec.commandLine();
        Options options = asked.options(machine);
        if (trials.isGiven() && (asked.json() || asked.csv())) {
            throw new BadInput("--trial adds sentences to the printed answer; 'footing trial FILE --json' gives a trial"
                    + " as JSON");
        }
        CaseArgument.Accepted read =
                trials.added(argument.read(terminal, commandLine.getErr()), terminal, commandLine.getErr());
        List<TrialQuote> quotes = asked.json() || asked.csv() ? List.of() : TrialsOption.quotes(read);
        if (machine != null) {
            read.checkMachine(machine);
        }
        Answering answering = new Answering(terminal, asked, commandLine.getOut(), commandLine.getErr());
        Answer answer = answering.answer(read.stated(), options);
        int code = answering.print(answer, read.warnings(), new NextSteps(argument.shownName()));
        if (!quotes.isEmpty()) {
            commandLine.getOut().print(TrialQuoteText.of(TrialQuoteText.NO_MONEY, quotes, terminal.letters()));
            commandLine.getOut().flush();
        }
        return code;
    }
}
