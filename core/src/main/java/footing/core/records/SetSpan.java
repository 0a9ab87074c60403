package footing.core.records;

import java.util.List;
import java.util.Optional;

/**
 * One set at one position while it was watched, in operating hours of its machine.
 *
 * @param fitted when it was fitted; NaN if nobody knows
 * @param from when watching it began
 * @param to when it came off or was last seen
 */
record SetSpan(
        String machine,
        Spot spot,
        String assembly,
        double fitted,
        double from,
        double to,
        End end,
        List<Double> flats) {
    enum End {
        RUNNING,
        WORN,
        OTHER,
        /** A new set was fitted and nobody wrote down why. */
        UNSAID
    }

    SetSpan {
        flats = List.copyOf(flats);
    }

    boolean hasAge() {
        return !Double.isNaN(fitted);
    }

    Optional<Life> life() {
        return hasAge() && to > from
                ? Optional.of(new Life(from - fitted, to - fitted, end == End.WORN))
                : Optional.empty();
    }

    /** The ages at which it went flat, for a set of known age. */
    Optional<PowerLaw.Window> window() {
        if (!hasAge() || !(to > from)) {
            return Optional.empty();
        }
        double first = from - fitted;
        double last = to - fitted;
        List<Double> ages = flats.stream()
                .map(x -> Math.min(Math.max(x - fitted, Math.max(first, LEAST_AGE)), last))
                .toList();
        return last > LEAST_AGE ? Optional.of(new PowerLaw.Window(first, last, ages)) : Optional.empty();
    }

    /** An hour, what a meter resolves: a flat at no age at all would have no likelihood. */
    private static final double LEAST_AGE = 1;
}
