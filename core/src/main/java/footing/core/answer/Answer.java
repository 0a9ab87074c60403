package footing.core.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What Footing says of a case.
 *
 * @param futures simulated for every machine
 * @param reached whether the futures were enough, in a sentence
 * @param complete false if it was stopped before everything was known
 */
public record Answer(
        footing.core.fleet.Case of,
        int futures,
        long seed,
        double threshold,
        String reached,
        boolean complete,
        List<String> warnings,
        List<MachineAnswer> machines,
        Fleet fleet) {
    public Answer {
        warnings = List.copyOf(warnings);
        machines = List.copyOf(machines);
    }

    /** Each machine's recommended saving added up future by future, and the start cost of all of them. */
    public record Fleet(Saving saving, double startCost) {}

    public MachineAnswer machine(String id) {
        return machines.stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no machine '" + id + "' in the answer"));
    }

    /** The same answer with one more warning, if there is one. */
    Answer warned(@Nullable String warning) {
        if (warning == null) {
            return this;
        }
        List<String> all = new java.util.ArrayList<>(warnings);
        all.add(warning);
        return new Answer(of, futures, seed, threshold, reached, complete, all, machines, fleet);
    }
}
