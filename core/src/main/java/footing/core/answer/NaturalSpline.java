package footing.core.answer;

/**
 * The basis of natural cubic splines on given knots, intercept left out: z itself and, for all knots but the last two,
 * d_k − d_{K−1} with d_k(z) = ((z − ξ_k)₊³ − (z − ξ_K)₊³)/(ξ_K − ξ_k). Linear beyond the outer knots.
 *
 * <p>Source: T. Hastie, R. Tibshirani, J. Friedman, The Elements of Statistical Learning, 2nd ed., equations 5.4–5.5
 * (from memory).
 */
final class NaturalSpline {
    private final double[] knots;

    NaturalSpline(double[] knots) {
        this.knots = knots.clone();
        for (int k = 1; k < knots.length; k++) {
            if (!(knots[k] > knots[k - 1])) {
                throw new IllegalArgumentException("knots must increase");
            }
        }
    }

    /** Functions of the basis. */
    int size() {
        return knots.length - 1;
    }

    void fill(double z, double[] row, int at) {
        int last = knots.length - 1;
        row[at] = z;
        double end = truncated(z, last - 1);
        for (int k = 0; k < last - 1; k++) {
            row[at + 1 + k] = truncated(z, k) - end;
        }
    }

    private double truncated(double z, int k) {
        double last = knots[knots.length - 1];
        return (cube(z - knots[k]) - cube(z - last)) / (last - knots[k]);
    }

    private static double cube(double x) {
        return x > 0 ? x * x * x : 0;
    }
}
