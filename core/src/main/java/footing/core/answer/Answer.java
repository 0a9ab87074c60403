package footing.core.answer;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

    /** On how many of the futures inputs were moved, in a sentence; empty if on all of them, or none were moved. */
    public Optional<String> movedOn() {
        boolean moved = machines.stream().anyMatch(m -> m.drivers() != null);
        return moved && futures > Sensitivity.FUTURES
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "What moves the answer, and which guesses could turn it, was found on the first %,d ways it could go.",
                        Sensitivity.FUTURES))
                : Optional.empty();
    }
}
