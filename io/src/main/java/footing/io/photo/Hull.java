package footing.io.photo;

import georegression.struct.point.Point2D_I32;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The convex hull of a blob, and the four lines that hug it. */
final class Hull {
    private static final double FAR = 1e5;

    private final List<Spot> points;

    private Hull(List<Spot> points) {
        this.points = points;
    }

    /** Andrew's monotone chain. */
    static Hull of(List<Point2D_I32> contour) {
        List<Point2D_I32> sorted = new ArrayList<>(contour);
        sorted.sort(Comparator.<Point2D_I32>comparingInt(p -> p.x).thenComparingInt(p -> p.y));
        List<Spot> hull = new ArrayList<>();
        chain(sorted, hull);
        java.util.Collections.reverse(sorted);
        chain(sorted, hull);
        return new Hull(hull);
    }

    private static void chain(List<Point2D_I32> sorted, List<Spot> hull) {
        int start = hull.size();
        for (Point2D_I32 p : sorted) {
            Spot next = new Spot(p.x, p.y);
            while (hull.size() >= start + 2 && cross(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next) <= 0) {
                hull.remove(hull.size() - 1);
            }
            hull.add(next);
        }
        hull.remove(hull.size() - 1);
    }

    private static double cross(Spot a, Spot b, Spot c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    double area() {
        return enclosed(points);
    }

    static double enclosed(List<Spot> points) {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            Spot a = points.get(i);
            Spot b = points.get((i + 1) % points.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    /** Leaves out the side that costs the least area until four are left. */
    @Nullable
    Quad quad() {
        List<Spot> left = new ArrayList<>(points);
        while (left.size() > 4) {
            int best = -1;
            double least = Double.MAX_VALUE;
            Spot merged = null;
            for (int i = 0; i < left.size(); i++) {
                Spot meet = meet(left, i);
                double added = meet == null ? Double.MAX_VALUE : Math.abs(cross(at(left, i), meet, at(left, i + 1)));
                if (meet != null && added < least) {
                    best = i;
                    least = added;
                    merged = meet;
                }
            }
            if (merged == null) {
                return null;
            }
            left.set(best, merged);
            left.remove((best + 1) % left.size());
        }
        return Quad.of(left);
    }

    private static Spot at(List<Spot> points, int i) {
        return points.get((i + points.size()) % points.size());
    }

    /** Where the sides before and after a side meet beyond it. */
    private static @Nullable Spot meet(List<Spot> points, int i) {
        Spot a = at(points, i - 1);
        Spot b = at(points, i);
        Spot c = at(points, i + 1);
        Spot d = at(points, i + 2);
        double ux = b.x() - a.x();
        double uy = b.y() - a.y();
        double vx = c.x() - d.x();
        double vy = c.y() - d.y();
        double det = ux * vy - uy * vx;
        if (!(Math.abs(det) > 1e-9)) {
            return null;
        }
        double s = ((c.x() - b.x()) * vy - (c.y() - b.y()) * vx) / det;
        double t = (ux * (c.y() - b.y()) - uy * (c.x() - b.x())) / -det;
        double x = b.x() + s * ux;
        double y = b.y() + s * uy;
        return s >= 0 && t >= 0 && Math.abs(x) < FAR && Math.abs(y) < FAR ? new Spot(x, y) : null;
    }
}
