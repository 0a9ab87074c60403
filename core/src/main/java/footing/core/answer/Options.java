package footing.core.answer;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a case is answered.
 *
 * @param futures to simulate; empty: as many as the answer needs
 * @param threshold the chance from which a saving is called sure
 * @param quick leaves break-evens, drivers, guesses and findOutFirst out
 * @param machine the only machine to answer, if one is named
 */
public record Options(OptionalInt futures, long seed, double threshold, boolean quick, Optional<String> machine) {
    public static final double USUAL_THRESHOLD = 0.8;
    public static final long USUAL_SEED = 1;

    public Options {
        if (futures.isPresent() && !(futures.getAsInt() >= 2)) {
            throw new IllegalArgumentException("at least 2 futures are needed, not " + futures.getAsInt());
        }
        if (!(threshold > 0.5 && threshold < 1)) {
            throw new IllegalArgumentException("a threshold lies between 50 % and 100 %, not " + threshold);
        }
    }

    public static Options usual() {
        return new Options(OptionalInt.empty(), USUAL_SEED, USUAL_THRESHOLD, false, Optional.empty());
    }

    public Options withFutures(int n) {
        return new Options(OptionalInt.of(n), seed, threshold, quick, machine);
    }

    public Options quickly() {
        return new Options(futures, seed, threshold, true, machine);
    }
}
