package footing.core.compare;

import footing.core.fleet.Input;
import java.util.List;

/**
 * A part of a change of an answer.
 *
 * @param inputs those that changed together; empty unless of kind {@link Kind#INPUTS}
 * @param machine the machine added or removed; else empty
 * @param change of the saving, in money
 */
public record Part(Kind kind, List<Input> inputs, String machine, double change) {
    /** What changed. */
    public enum Kind {
        /** One input, or a few that are only right together, such as the shares of a crew's fixes. */
        INPUTS,
        /** All that is no number: dates, lists, which packages. */
        OTHER,
        ADDED,
        REMOVED,
        /** Nothing stated: the two versions needed different numbers of futures to be as sure. */
        FUTURES
    }

    public Part {
        inputs = List.copyOf(inputs);
    }

    Part with(double newChange) {
        return new Part(kind, inputs, machine, newChange);
    }

    boolean sameCause(Part other) {
        return kind == other.kind && inputs.equals(other.inputs) && machine.equals(other.machine);
    }
}
