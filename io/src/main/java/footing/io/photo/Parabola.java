package footing.io.photo;

import java.util.List;

/** Least squares with one term more than a straight line. */
final class Parabola {
    private Parabola() {}

    static double at(double[] c, double t) {
        return c[0] + t * (c[1] + t * c[2]);
    }

    /** Through the chosen ones of the places, by the normal equations and Cramer's rule about t = ½. */
    static double[] through(double[] t, double[] y, List<Integer> chosen) {
        double[] s = new double[5];
        double[] r = new double[3];
        for (int i : chosen) {
            double u = t[i] - 0.5;
            double power = 1;
            for (int k = 0; k < 5; k++) {
                s[k] += power;
                if (k < 3) {
                    r[k] += power * y[i];
                }
                power *= u;
            }
        }
        double det = det(s[0], s[1], s[2], s[1], s[2], s[3], s[2], s[3], s[4]);
        if (!(Math.abs(det) > 1e-12)) {
            return new double[] {r[0] / s[0], 0, 0};
        }
        double a = det(r[0], s[1], s[2], r[1], s[2], s[3], r[2], s[3], s[4]) / det;
        double b = det(s[0], r[0], s[2], s[1], r[1], s[3], s[2], r[2], s[4]) / det;
        double c = det(s[0], s[1], r[0], s[1], s[2], r[1], s[2], s[3], r[2]) / det;
        return new double[] {a - b / 2 + c / 4, b - c, c};
    }

    private static double det(double... m) {
        return m[0] * (m[4] * m[8] - m[5] * m[7])
                - m[1] * (m[3] * m[8] - m[5] * m[6])
                + m[2] * (m[3] * m[7] - m[4] * m[6]);
    }
}
