package footing.core.compare;

import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two versions of a case side by side, each answered as it is by itself; both on the same first futures.
 *
 * @param futuresBefore simulated for every machine of the first version
 * @param futuresAfter and of the second; every mixture takes the larger of the two
 * @param complete false if it was stopped before the changes were split
 * @param inputs those that differ for a machine of both versions, in the order of a case file
 * @param others what differs beside numbers
 * @param machines of the first version, then those added
 * @param recommended the savings of whatever is recommended, added up over all machines; null if not complete
 * @param asBefore the savings of what was recommended before, over the machines of both; null also if a machine no
 *     longer considers it
 */
public record Difference(
        Case before,
        Case after,
        int futuresBefore,
        int futuresAfter,
        long seed,
        boolean complete,
        List<Changed> inputs,
        List<OtherChange> others,
        List<MachineDifference> machines,
        @Nullable Split recommended,
        @Nullable Split asBefore) {
    public Difference {
        inputs = List.copyOf(inputs);
        others = List.copyOf(others);
        machines = List.copyOf(machines);
    }

    /**
     * Compares two versions.
     *
     * @param options futures (unless stated as many as each version's answer needs), seed and threshold; the rest is
     *     left aside
     * @throws IllegalArgumentException if the currencies differ, since savings in two currencies can't be compared, or
     *     a case has no machine
     */
    public static Difference between(Case before, Case after, Options options, Workers workers, Watch watch) {
        String was = before.heading().currency();
        String is = after.heading().currency();
        if (!was.equals(is)) {
            throw new IllegalArgumentException(was + " and " + is + " can't be compared");
        }
        return new Reckoning(before, after, options, workers, watch).difference();
    }

    /** Simulated for every mixture. */
    public int futures() {
        return Math.max(futuresBefore, futuresAfter);
    }

    /** What is measured of machines and assemblies of both versions and differs; no money rests on it. */
    public List<MeasureChange> measures() {
        return MeasureChange.all(before, after);
    }

    /** True if the two say the same in all that an answer rests on. */
    public boolean isNothing() {
        return inputs.isEmpty() && others.isEmpty();
    }

    /** True if every part is an average over all orders; false if a machine had too many changes for that. */
    public boolean overAllOrders() {
        return machines.stream()
                .map(MachineDifference::recommended)
                .allMatch(s -> s == null || s.parts().size() <= Sharing.MOST_EXACT);
    }
}
