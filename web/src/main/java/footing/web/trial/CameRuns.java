package footing.web.trial;

import footing.core.trial.Bout;
import footing.core.trial.Run;
import footing.core.trial.Side;
import footing.core.trial.Trial;
import footing.io.trial.StatedTrial;
import footing.io.words.Shown;
import java.util.ArrayList;
import java.util.List;

/** The runs of a trial that came as a file, in words. */
final class CameRuns {
    private CameRuns() {}

    /** In the order in which they were made. */
    static List<String> of(StatedTrial stated) {
        Trial trial = stated.trial();
        Shown shown = stated.measure().shown(stated.metric());
        List<String> runs = new ArrayList<>();
        for (Run run : trial.runs()) {
            String lane = run.lane() == null ? "" : ", lane " + run.lane();
            runs.add("Run " + run.order() + ": " + trial.of(run.side()).name() + on(run.surface()) + lane + ": "
                    + shown.value(run.value()));
        }
        for (Bout bout : trial.bouts()) {
            Side winner = bout.winner();
            String won = winner == null ? "even" : trial.of(winner).name() + " won";
            runs.add("Pull " + bout.order() + on(bout.surface()) + ": " + won);
        }
        return runs;
    }

    private static String on(String surface) {
        return surface.isEmpty() ? "" : ", " + surface;
    }
}
