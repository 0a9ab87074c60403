package footing.core.signal;

/** Units accelerations are written in; standard gravity is 9.80665 m/s² by definition (NIST SP 811, appendix B). */
public enum AccelerationUnit {
    METERS_PER_SECOND_SQUARED("m/s2", 1),
    GRAVITY("g", 9.80665),
    THOUSANDTHS_OF_GRAVITY("mg", 0.00980665);

    private final String written;
    private final double factor;

    AccelerationUnit(String written, double factor) {
        this.written = written;
        this.factor = factor;
    }

    public String written() {
        return written;
    }

    /** One of this unit in m/s². */
    public double factor() {
        return factor;
    }
}
