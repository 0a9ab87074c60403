package footing.cli;

import footing.core.answer.Options;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How many futures are simulated, and which. */
final class FuturesOptions {
    private static final int LEAST_FUTURES = 2;
    private static final int MOST_FUTURES = 1_000_000;

    @Option(
            names = "--futures",
            paramLabel = "N",
            description =
                    "How many ways it could go to simulate for each machine; without it as many as this command needs.")
    private @Nullable Integer futures;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "Start of the random draws (${DEFAULT-VALUE}); the same seed gives the same answer.")
    private long seed = Options.USUAL_SEED;

    /** The futures asked for; empty if none were. */
    OptionalInt futures() throws BadInput {
        if (futures == null) {
            return OptionalInt.empty();
        }
        if (!(futures >= LEAST_FUTURES && futures <= MOST_FUTURES)) {
            throw new BadInput(
                    "--futures " + futures + ": between " + LEAST_FUTURES + " and " + MOST_FUTURES + " would fit");
        }
        return OptionalInt.of(futures);
    }

    long seed() {
        return seed;
    }
}
