package footing.core.quantity;

/** The one thing every quantity must be. */
final class Finite {
    private Finite() {}

    static void check(String what, double x) {
        if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a " + what + " is a finite number, not " + x);
        }
    }
}
