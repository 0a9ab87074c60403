package footing.core.compare;

import footing.core.answer.MachineAnswer;
import footing.core.answer.Saving;
import footing.core.answer.Verdict;
import footing.core.fleet.ResolvedMachine;
import org.jspecify.annotations.Nullable;

/**
 * How the answer for one machine differs.
 *
 * @param before null for a machine that was not there
 * @param after null for a machine that is no longer there
 * @param recommended the saving of whatever is recommended; null if stopped before it was known, as is the next
 * @param asBefore the saving of what was recommended before; null also if it is no longer considered
 */
public record MachineDifference(
        String id,
        @Nullable Standing before,
        @Nullable Standing after,
        @Nullable Split recommended,
        @Nullable Split asBefore) {
    /** What is recommended, how clearly, and what it saves against the carried package. */
    public record Standing(ResolvedMachine.Entry entry, boolean carried, Verdict verdict, Saving saving) {
        static Standing of(MachineAnswer m) {
            return new Standing(
                    m.choice().entry(),
                    m.recommended() == 0,
                    m.verdict(),
                    m.choice().saving());
        }
    }

    public boolean isCommon() {
        return before != null && after != null;
    }
}
