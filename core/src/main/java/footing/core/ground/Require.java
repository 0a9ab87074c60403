package footing.core.ground;

/** Guards that NaN can't pass. */
final class Require {
    private Require() {}

    static void above(String what, double least, double x) {
        if (!(x > least && x < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above " + least + ", not " + x);
        }
    }

    static void within(String what, double least, double most, double x) {
        if (!(x >= least && x <= most)) {
            throw new IllegalArgumentException(what + " must lie from " + least + " to " + most + ", not " + x);
        }
    }

    static void finite(String what, double x) {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be a finite number, not " + x);
        }
    }
}
