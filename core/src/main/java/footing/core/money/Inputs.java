package footing.core.money;

/** Guards shared by the package; NaN passes none of them. */
final class Inputs {

    private Inputs() {}

    static double rate(double rate) {
        if (!(rate > -1) || Double.isInfinite(rate)) {
            throw new IllegalArgumentException("rate is " + rate + ", must be a finite share above -1"
                    + "\nGive 8 % as 0.08; a rate of -1 or less has no present value.");
        }
        return rate;
    }

    static double periods(double periods) {
        if (!(periods >= 0) || Double.isInfinite(periods)) {
            throw new IllegalArgumentException(
                    "periods is " + periods + ", must be finite and at least 0\nCount periods from now on.");
        }
        return periods;
    }

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + ", must be finite"
                    + "\nLook for an empty cell or a division by zero where it comes from.");
        }
        return value;
    }

    static double[] finite(String name, double[] values) {
        for (int i = 0; i < values.length; i++) {
            finite(name + "[" + i + "]", values[i]);
        }
        return values;
    }

    static double notNegative(String name, double value) {
        if (!(finite(name, value) >= 0)) {
            throw new IllegalArgumentException(
                    name + " is " + value + ", must be at least 0\nGive an amount without its sign.");
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(finite(name, value) > 0)) {
            throw new IllegalArgumentException(name + " is " + value + ", must be above 0\nGive a positive number.");
        }
        return value;
    }

    static double share(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " is " + value + ", must be from 0 to 1\nGive 30 % as 0.3.");
        }
        return value;
    }

    static int between(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(name + " is " + value + ", must be from " + low + " to " + high
                    + "\nLook at the length of the term or table it counts in.");
        }
        return value;
    }
}
