package footing.core.answer;

import footing.core.fleet.Case;
import footing.core.future.MachineFutures;
import java.util.List;

/** What moves an answer. */
final class Sensitivity {
    Sensitivity(Case stated, Options options, Workers workers, Watch watch) {}

    List<MachineAnswer> complete(List<MachineFutures> futures, List<MachineAnswer> answers) {
        return answers;
    }
}
