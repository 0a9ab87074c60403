package footing.io.photo;

/** The size of the sheet or frame in the picture, in meters. */
public record Sheet(double width, double length) {
    private static final double LEAST = 0.03;
    private static final double MOST = 5;

    public Sheet {
        if (!(width >= LEAST && width <= MOST && length >= LEAST && length <= MOST)) {
            throw new IllegalArgumentException("a sheet measures from 3 cm to 5 m");
        }
    }
}
