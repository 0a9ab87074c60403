package footing.cli;

import footing.core.answer.Options;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How an answer is computed and printed. */
final class AnswerOptions {
    private static final int MOST_THREADS = 1024;

    @Mixin
    private FuturesOptions run;

    @Option(names = "--threads", paramLabel = "T", description = "Threads to use; without it one for each processor.")
    private @Nullable Integer threads;

    @Option(names = "--json", description = "Print one JSON document, footing-answer/1, and nothing else.")
    private boolean json;

    @Option(names = "--csv", description = "Print comma-separated values, a row for each machine and choice.")
    private boolean csv;

    @Option(
            names = "--quick",
            description = "Leave out break-even points, what moves the answer and what to find out first.")
    private boolean quick;

    @Option(
            names = "--threshold",
            paramLabel = "P%",
            description = "The chance from which a saving is called sure, between 50%% and 100%% (80%%).")
    private @Nullable String threshold;

    boolean json() {
        return json;
    }

    boolean csv() {
        return csv;
    }

    int threads() throws BadInput {
        int count = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (!(count >= 1 && count <= MOST_THREADS)) {
            throw new BadInput("--threads " + count + ": between 1 and " + MOST_THREADS + " would fit");
        }
        return count;
    }

    Options options(@Nullable String machine) throws BadInput {
        if (json && csv) {
            throw new BadInput("--json and --csv exclude each other: choose one");
        }
        return new Options(run.futures(), run.seed(), share(), quick, Optional.ofNullable(machine));
    }

    private double share() throws BadInput {
        if (threshold == null) {
            return Options.USUAL_THRESHOLD;
        }
        String text = threshold.strip();
        if (text.matches("\\d{1,3}(\\.\\d{1,9})?\\s*%")) {
            double share =
                    Double.parseDouble(text.substring(0, text.length() - 1).strip()) / 100;
            if (share > 0.5 && share < 1) {
                return share;
            }
        }
        throw new BadInput("--threshold '" + threshold + "': a share between 50% and 100%, such as 90%, would fit");
    }
}
