package footing.core.quantity;

/** A pressure above the air's, in pascals. */
public record Pressure(double pascals) implements Comparable<Pressure> {
    public Pressure {
        Finite.check("pressure", pascals);
    }

    private static final double PSI = 4.4482216152605 / 0.00064516;

    public static Pressure ofPsi(double x) {
        return new Pressure(x * PSI);
    }

    public static Pressure ofKilopascals(double x) {
        return new Pressure(x * 1000);
    }

    public double psi() {
        return pascals / PSI;
    }

    public double kilopascals() {
        return pascals / 1000;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
