package footing.core.compare;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.ResolvedMachine;
import java.util.List;
import java.util.OptionalDouble;

/** Of an answer what a comparison needs; a whole one is too large to keep for every mixture. */
record Answered(MachineDifference.Standing standing, List<ResolvedMachine.Entry> entries, List<Double> savings) {
    static Answered of(MachineAnswer m) {
        return new Answered(
                MachineDifference.Standing.of(m),
                m.entries().stream().map(EntryAnswer::entry).toList(),
                m.entries().stream().map(e -> e.saving().mean()).toList());
    }

    /** The saving of whatever is recommended. */
    double recommended() {
        return standing.saving().mean();
    }

    /** The saving of an entry of another version; empty if it is not considered. What is carried has no time. */
    OptionalDouble saving(ResolvedMachine.Entry entry) {
        for (int e = 0; e < entries.size(); e++) {
            boolean same = entries.get(e).id().equals(entry.id());
            if (same && (e == 0 || entries.get(e).when() == entry.when())) {
                return OptionalDouble.of(savings.get(e));
            }
        }
        return OptionalDouble.empty();
    }
}
