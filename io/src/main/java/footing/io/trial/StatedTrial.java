package footing.io.trial;

import footing.core.signal.Finding;
import footing.core.trial.Trial;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trial as a file states it.
 *
 * @param note null if there is none
 * @param metric true to show SI units
 * @param measure what is judged
 * @param logs what was remarkable about the logs
 */
public record StatedTrial(
        String title, @Nullable String note, boolean metric, Measure measure, Trial trial, List<LogNote> logs) {
    public StatedTrial {
        logs = List.copyOf(logs);
    }

    /** A finding about the log of a run, counted from 1. */
    public record LogNote(int run, String log, Finding finding) {}
}
