package footing.core.quantity;

/** A mass in kilograms, or the load a scale shows. */
public record Mass(double kilograms) implements Comparable<Mass> {
    public Mass {
        Finite.check("mass", kilograms);
    }

    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;

    public static Mass ofPounds(double x) {
        return new Mass(x * POUND);
    }

    public double pounds() {
        return kilograms / POUND;
    }

    /** What it weighs under standard gravity, in newtons. */
    public double newtons() {
        return kilograms * GRAVITY;
    }

    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
