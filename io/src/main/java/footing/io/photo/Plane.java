package footing.io.photo;

import java.util.List;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A flat sheet seen by a camera: the homography x = (a·u + b·v + c)/(g·u + h·v + 1), y alike, from the sheet (meters)
 * to the picture (pixels), fixed by four corners.
 */
final class Plane {
    private static final double SINGULAR = 1e-12;

    private final double[] h;
    private final double[] back;

    private Plane(double[] h, double[] back) {
        this.h = h;
        this.back = back;
    }

    /** From the sheet's corners in the picture, in the order (0, 0), (w, 0), (w, l), (0, l) on the sheet. */
    static Plane of(List<Spot> corners, double width, double length) throws PhotoTrouble {
        double[] u = {0, width, width, 0};
        double[] v = {0, 0, length, length};
        double[][] m = new double[8][];
        double[] right = new double[8];
        for (int i = 0; i < 4; i++) {
            double x = corners.get(i).x();
            double y = corners.get(i).y();
            m[2 * i] = new double[] {u[i], v[i], 1, 0, 0, 0, -u[i] * x, -v[i] * x};
            m[2 * i + 1] = new double[] {0, 0, 0, u[i], v[i], 1, -u[i] * y, -v[i] * y};
            right[2 * i] = x;
            right[2 * i + 1] = y;
        }
        LUDecomposition lu = new LUDecomposition(MatrixUtils.createRealMatrix(m), SINGULAR);
        if (!lu.getSolver().isNonSingular()) {
            throw new PhotoTrouble("the four corners don't span a sheet", "name them going round the sheet");
        }
        double[] h = lu.getSolver()
                .solve(MatrixUtils.createRealVector(right))
                .toArray();
        double[][] full = {{h[0], h[1], h[2]}, {h[3], h[4], h[5]}, {h[6], h[7], 1}};
        RealMatrix inverse = MatrixUtils.inverse(MatrixUtils.createRealMatrix(full));
        double[] back = new double[9];
        for (int i = 0; i < 9; i++) {
            back[i] = inverse.getEntry(i / 3, i % 3);
        }
        return new Plane(new double[] {h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1}, back);
    }

    Spot inPicture(double u, double v) {
        return apply(h, u, v);
    }

    Spot onSheet(double x, double y) {
        return apply(back, x, y);
    }

    private static Spot apply(double[] m, double a, double b) {
        double w = m[6] * a + m[7] * b + m[8];
        return new Spot((m[0] * a + m[1] * b + m[2]) / w, (m[3] * a + m[4] * b + m[5]) / w);
    }

    /** Pixels a square meter at a point of the sheet: the determinant of the map there. */
    double pixelsPerArea(double u, double v) {
        double step = 1e-5;
        Spot o = inPicture(u, v);
        return Math.abs(o.turn(inPicture(u + step, v), inPicture(u, v + step))) / (step * step);
    }
}
