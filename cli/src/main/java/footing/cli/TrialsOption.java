package footing.cli;

import footing.io.trial.TrialQuote;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Trials whose verdicts are quoted beside an answer. */
final class TrialsOption {
    @Option(
            names = "--trial",
            paramLabel = "FILE",
            description = "Quote the verdict of this trial beside the money; may be given several times.")
    private List<String> files = List.of();

    /** Reads and judges them, so that a wrong one is told before anything is worked out. */
    List<TrialQuote> quotes(Terminal terminal) throws BadInput, IOException {
        List<TrialQuote> quotes = new ArrayList<>();
        for (String file : files) {
            quotes.add(TrialQuote.of(TrialCommand.accepted(file, terminal).stated()));
        }
        return quotes;
    }
}
