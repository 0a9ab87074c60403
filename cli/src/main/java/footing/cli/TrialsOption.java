package footing.cli;

import footing.core.ground.TakenPrint;
import footing.core.ground.TakenPrints;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialQuote;
import footing.io.words.TakenWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Trials that stand beside an answer, with those the case names itself: their verdicts, and the prints they took. */
final class TrialsOption {
    @Option(
            names = "--trial",
            paramLabel = "FILE",
            description = "Quote the verdict of this trial beside the answer, and let the prints it took stand in place"
                    + " of those of the case; may be given several times. A case can name its trials itself.")
    private List<String> files = List.of();

    boolean isGiven() {
        return !files.isEmpty();
    }

    /**
     * Reads the trials that are given, so that a wrong one is told before anything is worked out.
     *
     * @return the case with the prints of all trials, given and named
     * @throws BadInput if a trial can't be used
     */
    CaseArgument.Accepted added(CaseArgument.Accepted read, Terminal terminal, PrintWriter err)
            throws BadInput, IOException {
        if (files.isEmpty()) {
            return read;
        }
        List<StatedTrial> all = new ArrayList<>(read.trials());
        for (String file : files) {
            all.add(TrialCommand.accepted(file, terminal).stated());
        }
        TakenPrints.Placed placed = TakenPrints.into(read.stated(), prints(all));
        List<TakenPrints.Unused> told =
                TakenPrints.into(read.stated(), prints(read.trials())).unused();
        placed.unused().stream()
                .filter(u -> !told.contains(u))
                .map(u -> "warning: " + TakenWords.of(u) + "; " + TakenWords.advice(u.why()))
                .forEach(w -> err.println(terminal.letters().shown(w)));
        return new CaseArgument.Accepted(placed.stated(), read.warnings(), all);
    }

    private static List<TakenPrint> prints(List<StatedTrial> trials) {
        return trials.stream().flatMap(t -> t.evidence().prints().stream()).toList();
    }

    static List<TrialQuote> quotes(CaseArgument.Accepted read) {
        return read.trials().stream().map(TrialQuote::of).toList();
    }
}
