package footing.core.records;

/**
 * How much a count from memory weighs: 'about five' may have been four or seven. With an error of a share s the
 * variance of a rate's logarithm is 1/n + s², as if n/(1 + ns²) flats had been counted in as many fewer hours.
 *
 * <p>s = {@value #ERROR}: common practice, no source.
 */
final class Memory {
    static final double ERROR = 0.3;

    private Memory() {}

    /** The share of its weight that a remembered count keeps. */
    static double weight(double remembered) {
        return 1 / (1 + remembered * ERROR * ERROR);
    }
}
