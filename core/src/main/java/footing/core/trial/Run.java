package footing.core.trial;

import org.jspecify.annotations.Nullable;

/**
 * One measured run.
 *
 * @param order place in the order in which the runs were made
 * @param value in the SI unit of the trial's kind
 * @param surface what it was made on; empty if there is only one
 * @param lane null if none was noted
 */
public record Run(
        int order,
        Side side,
        double value,
        String surface,
        @Nullable String lane,
        Conditions conditions) {
    public Run {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the value of a run is a number, not " + value);
        }
    }
}
