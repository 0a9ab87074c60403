package footing.io.figure;

/**
 * What a color stands for. Whoever draws picks colors that people with any kind of color vision tell apart, for light
 * and for dark; a tone never says anything alone: strokes, patterns and words say it too.
 */
public enum Tone {
    /** What is on the machine now. */
    CARRIED,
    /** What the answer speaks of. */
    CHOICE,
    GAIN,
    LOSS,
    /** What stays in the background. */
    QUIET,
    PART_1,
    PART_2,
    PART_3,
    PART_4,
    PART_5,
    PART_6,
    PART_7
}
