package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;

/** What a machine's hour meter shows at the date of the case. */
final class HourMeter {
    private HourMeter() {}

    static double now(Answer answer, ResolvedMachine m) {
        return new Values(answer.of(), answer.of().machine(m.id()))
                .get(Input.of(Key.HOURS_NOW, m.id()))
                .likely();
    }
}
