package footing.io.trial;

import footing.core.ground.TakenPrint;
import footing.core.signal.Finding;
import footing.core.trial.Trial;
import footing.io.photo.Doubt;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trial as a file states it.
 *
 * @param note null if there is none
 * @param metric true to show SI units
 * @param measure what is judged
 * @param evidence what the runs' logs and photos gave beside the judged values
 */
public record StatedTrial(
        String title, @Nullable String note, boolean metric, Measure measure, Trial trial, Evidence evidence) {

    /** A finding about the log of a run, counted from 1. */
    public record LogNote(int run, String log, Finding finding) {}

    /** A doubt about the photo of a run, counted from 1. */
    public record PhotoNote(int run, String photo, Doubt doubt) {}

    /**
     * Beside the judged values.
     *
     * @param logs what was remarkable about the logs
     * @param photos how many were measured
     * @param doubts about them
     * @param prints that were measured in full and without doubt
     */
    public record Evidence(List<LogNote> logs, int photos, List<PhotoNote> doubts, List<TakenPrint> prints) {
        public Evidence {
            logs = List.copyOf(logs);
            doubts = List.copyOf(doubts);
            prints = List.copyOf(prints);
        }
    }

    public List<LogNote> logs() {
        return evidence.logs();
    }
}
