package footing.io.photo;

import boofcv.alg.geo.h.HomographyDirectLinearTransform;
import boofcv.struct.geo.AssociatedPair;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/**
 * The flat ground in the picture: where a place on it, in meters from the card's first corner, is seen, and back.
 */
final class Plane {
    private final Lens lens;
    /** 3 by 3, row by row, onto straightened places. */
    private final double[] toPicture;

    private final double[] toGround;

    private Plane(Lens lens, double[] toPicture, double[] toGround) {
        this.lens = lens;
        this.toPicture = toPicture;
        this.toGround = toGround;
    }

    /** From the card's corners, the first side of which is {@code width} meters long; null if they make no plane. */
    static @Nullable Plane of(Quad corners, Lens lens, double width, double height) {
        double[][] card = {{0, 0}, {width, 0}, {width, height}, {0, height}};
        List<AssociatedPair> pairs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Spot seen = lens.straightened(corners.corner(i));
            pairs.add(new AssociatedPair(card[i][0], card[i][1], seen.x(), seen.y()));
        }
        DMatrixRMaj h = new DMatrixRMaj(3, 3);
        if (!new HomographyDirectLinearTransform(true).process(pairs, h)) {
            return null;
        }
        double[] inverse = inverse(h.data);
        return inverse == null ? null : new Plane(lens, h.data.clone(), inverse);
    }

    private static double @Nullable [] inverse(double[] m) {
        double[] cofactors = {
            m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
        };
        double det = m[0] * cofactors[0] + m[1] * cofactors[3] + m[2] * cofactors[6];
        if (!(Math.abs(det) > 0 && Math.abs(det) < Double.POSITIVE_INFINITY)) {
            return null;
        }
        for (int i = 0; i < cofactors.length; i++) {
            cofactors[i] /= det;
        }
        return cofactors;
    }

    /** Where a place on the ground is seen. */
    Spot seen(double x, double y) {
        return lens.bent(mapped(toPicture, x, y));
    }

    /** Which place on the ground, in meters, is seen there. */
    Spot ground(Spot spot) {
        Spot straight = lens.straightened(spot);
        return mapped(toGround, straight.x(), straight.y());
    }

    private static Spot mapped(double[] m, double x, double y) {
        double w = m[6] * x + m[7] * y + m[8];
        double u = (m[0] * x + m[1] * y + m[2]) / w;
        double v = (m[3] * x + m[4] * y + m[5]) / w;
        boolean near = Math.abs(u) < 1e5 && Math.abs(v) < 1e5;
        return near ? new Spot(u, v) : new Spot(1e6, 1e6);
    }

    /** Square meters that a pixel covers around a place in the picture. */
    double areaOfPixel(Spot at) {
        Spot o = ground(at);
        Spot right = ground(new Spot(at.x() + 1, at.y()));
        Spot down = ground(new Spot(at.x(), at.y() + 1));
        return Math.abs((right.x() - o.x()) * (down.y() - o.y()) - (right.y() - o.y()) * (down.x() - o.x()));
    }

    /**
     * How ill a camera of a usual angle of view explains these corners: 0 if one explains them exactly. For square
     * pixels and a middle in the middle, the images of the card's two directions, turned back by the camera, are
     * perpendicular and equally long (R. Hartley, A. Zisserman, Multiple View Geometry, 8.8, from memory).
     */
    double strangeness() {
        double least = Double.MAX_VALUE;
        // In half diagonals of the picture: lenses from 19 to 130 mm as told for 35 mm film.
        for (double focal = 0.9; focal <= 6; focal *= 1.05) {
            double[] a = direction(0, focal * lens.half());
            double[] b = direction(1, focal * lens.half());
            double la = Math.sqrt(dot(a, a));
            double lb = Math.sqrt(dot(b, b));
            double skew = dot(a, b) / (la * lb);
            double uneven = 2 * (la - lb) / (la + lb);
            least = Math.min(least, skew * skew + uneven * uneven);
        }
        return Math.sqrt(least);
    }

    private double[] direction(int column, double focal) {
        double w = toPicture[6 + column];
        return new double[] {
            (toPicture[column] - lens.x() * w) / focal, (toPicture[3 + column] - lens.y() * w) / focal, w
        };
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
