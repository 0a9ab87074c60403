package footing.io.photo;

import java.util.ArrayList;
import java.util.List;

/** Four corners in a picture that make a convex figure, clockwise as one looks at it. */
record Quad(List<Spot> corners) {
    private static final double LEAST_TURN = 0.05;

    Quad {
        corners = List.copyOf(corners);
    }

    /** Of four corners in any order; null if they make no convex figure worth the name. */
    static @org.jspecify.annotations.Nullable Quad of(List<Spot> any) {
        if (any.size() != 4) {
            return null;
        }
        double x = any.stream().mapToDouble(Spot::x).average().orElseThrow();
        double y = any.stream().mapToDouble(Spot::y).average().orElseThrow();
        List<Spot> sorted = new ArrayList<>(any);
        sorted.sort(java.util.Comparator.comparingDouble(s -> Math.atan2(s.y() - y, s.x() - x)));
        Quad quad = new Quad(sorted);
        return quad.isConvex() ? quad : null;
    }

    /** Every corner turns clearly the same way. */
    private boolean isConvex() {
        for (int i = 0; i < 4; i++) {
            Spot a = corner(i);
            Spot b = corner(i + 1);
            Spot c = corner(i + 2);
            double cross = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            if (!(cross > LEAST_TURN * a.to(b) * b.to(c))) {
                return false;
            }
        }
        return true;
    }

    Spot corner(int i) {
        return corners.get(i & 3);
    }

    /** Length of the side from corner i to the next. */
    double side(int i) {
        return corner(i).to(corner(i + 1));
    }

    double shortest() {
        return Math.min(Math.min(side(0), side(1)), Math.min(side(2), side(3)));
    }

    double longest() {
        return Math.max(Math.max(side(0), side(1)), Math.max(side(2), side(3)));
    }

    double area() {
        double twice = 0;
        for (int i = 0; i < 4; i++) {
            twice += corner(i).x() * corner(i + 1).y()
                    - corner(i + 1).x() * corner(i).y();
        }
        return twice / 2;
    }

    /** The same corners, the second first. */
    Quad turned() {
        return new Quad(List.of(corner(1), corner(2), corner(3), corner(0)));
    }

    boolean isNear(Quad other, double distance) {
        for (Spot c : corners) {
            if (other.corners.stream().noneMatch(o -> o.to(c) <= distance)) {
                return false;
            }
        }
        return true;
    }
}
