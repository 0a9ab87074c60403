package footing.core.fitting;

import footing.core.fleet.Position;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Makes findings. */
final class Findings {
    private Findings() {}

    static Finding asCarried(Aspect aspect, Position position) {
        return new Finding(
                aspect,
                position,
                Fits.FITS,
                Finding.Why.AS_CARRIED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                null);
    }

    static Finding unknown(
            Aspect aspect, @Nullable Position position, OptionalDouble have, OptionalDouble need, Settle settle) {
        return new Finding(aspect, position, Fits.CHECK, Finding.Why.UNKNOWN, have, need, settle);
    }

    /** {@code closeCall} is what would settle it should it be too close. */
    static Finding compared(Aspect aspect, @Nullable Position position, Compared numbers, Settle closeCall) {
        boolean close = numbers.verdict() == Fits.CHECK;
        Finding.Why why = numbers.typical() ? Finding.Why.COMPARED_TYPICAL : Finding.Why.COMPARED;
        return new Finding(
                aspect,
                position,
                numbers.verdict(),
                close ? Finding.Why.CLOSE : why,
                OptionalDouble.of(numbers.have()),
                OptionalDouble.of(numbers.need()),
                close ? closeCall : null);
    }

    /** Two numbers and what came of them. */
    record Compared(double have, double need, Fits verdict, boolean typical) {
        /** Fits if there is at least as much as needed; {@code close} of it below is for a check. */
        static Compared atLeast(double have, double need, double close, boolean typical) {
            Fits verdict = have >= need ? Fits.FITS : have >= need - close ? Fits.CHECK : Fits.DOES_NOT_FIT;
            return new Compared(have, need, verdict, typical);
        }

        /** Fits if they are the same within {@code fits}; up to {@code close} is for a check. */
        static Compared alike(double have, double need, double fits, double close) {
            double off = Math.abs(have - need);
            Fits verdict = off <= fits ? Fits.FITS : off <= close ? Fits.CHECK : Fits.DOES_NOT_FIT;
            return new Compared(have, need, verdict, false);
        }
    }
}
