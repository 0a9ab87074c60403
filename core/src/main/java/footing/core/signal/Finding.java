package footing.core.signal;

/** What is remarkable about a log. */
public sealed interface Finding {
    /** The clock of the samples was unsteady, so that they were put on a steady one; the largest step over the usual. */
    record Resampled(double rate, double largestStep) implements Finding {}

    /** Nothing above half the rate can be seen; a share of the weighting's band, 0.5 to 80 Hz, in octaves. */
    record LowRate(double rate, double highest, double missingOctaves) implements Finding {}

    /** Times without samples. */
    record Gaps(int count, double seconds) implements Finding {}

    /** Parts between gaps too short to weight. */
    record TooShortParts(double seconds) implements Finding {}

    /** Samples that lie at the end of the instrument's range; channel counted from 0. */
    record Clipped(int channel, int samples) implements Finding {}

    /** What should be gravity is a tenth or ten times of it: the values look like another unit. */
    record LooksLike(AccelerationUnit unit, double mean) implements Finding {}

    /** Gravity isn't in the values, so that their unit can't be checked. */
    record UnitUnchecked() implements Finding {}

    /** The pull ended before the wheel had slipped for a second. */
    record NoSteadyPull(double seconds) implements Finding {}
}
