package footing.core.fitting;

import footing.core.fleet.Position;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One test of one wheel, or of the machine's width.
 *
 * @param position null for the machine as a whole
 * @param have what the new wheel brings or leaves, SI units; not there if unknown
 * @param need what the machine asks for
 * @param settle what would settle a check; null if nothing is open
 */
public record Finding(
        Aspect aspect,
        @Nullable Position position,
        Fits verdict,
        Why why,
        OptionalDouble have,
        OptionalDouble need,
        @Nullable Settle settle) {
    /** How it was decided. */
    public enum Why {
        /** By the two numbers. */
        COMPARED,
        /** By the two numbers, of which one is typical of its class or only the size on the sidewall. */
        COMPARED_TYPICAL,
        /** It is the wheel that is on the machine, at most treated. */
        AS_CARRIED,
        /** A number lacks. */
        UNKNOWN,
        /** Closer than it should be, or than a tape can tell. */
        CLOSE
    }

    public Finding {
        if ((verdict == Fits.CHECK) != (settle != null)) {
            throw new IllegalArgumentException("a check names what would settle it, and nothing else does: " + aspect);
        }
    }

    /** Have less need; what a load, a speed or a gap has to spare. */
    public OptionalDouble margin() {
        return have.isPresent() && need.isPresent()
                ? OptionalDouble.of(have.getAsDouble() - need.getAsDouble())
                : OptionalDouble.empty();
    }
}
