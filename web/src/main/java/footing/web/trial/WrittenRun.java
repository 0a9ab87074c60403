package footing.web.trial;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A run as it was written down.
 *
 * @param sentAs made by the sender, once for each run
 * @param place of the plan
 * @param made when, by the sender's clock, as ISO 8601 writes it
 * @param cells keys of a run in a trial file
 */
record WrittenRun(long id, String sentAs, String place, String made, Map<String, String> cells, boolean undone) {
    WrittenRun {
        cells = new LinkedHashMap<>(cells);
    }
}
