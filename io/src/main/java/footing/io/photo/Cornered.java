package footing.io.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * A card's corners in the picture, from its edges.
 *
 * @param lens that makes its edges straightest
 * @param support the least share of an edge that was seen
 * @param bow what remains of the edges' bows, the largest, as a share of an edge's length
 * @param error of a corner, in pixels
 */
record Cornered(Quad quad, Lens lens, double support, double bow, double error) {
    /** Corners that somebody pointed at: nothing is known of the lens. */
    static Cornered pointed(Quad quad, int width, int height, double error) {
        return new Cornered(quad, Lens.straight(width, height), 1, 0, error);
    }

    /** Follows the edges near guessed corners, first farther off and then nearer. */
    static Cornered follow(Tone tone, Quad guess, double reach) {
        Cornered found = once(tone, guess, Math.max(4, reach * guess.shortest()));
        return found.support > 0 ? once(tone, found.quad, Math.max(4, 0.012 * found.quad.shortest())) : found;
    }

    private static Cornered once(Tone tone, Quad guess, double reach) {
        int width = tone.pixels().width;
        int height = tone.pixels().height;
        List<Edge> edges = new ArrayList<>();
        double support = 1;
        for (int i = 0; i < 4; i++) {
            Edge edge = Edge.near(tone, guess.corner(i), guess.corner(i + 1), reach);
            edges.add(edge);
            support = Math.min(support, edge.support());
        }
        Quad quad = support > 0 ? crossed(edges) : null;
        if (quad == null) {
            return new Cornered(guess, Lens.straight(width, height), 0, 0, Double.MAX_VALUE);
        }
        List<List<Spot>> lines = edges.stream().map(Cornered::line).toList();
        Lens lens = Lens.of(lines, width, height);
        double bow =
                lines.stream().mapToDouble(l -> Math.abs(lens.bowOf(l))).max().orElseThrow();
        double error = edges.stream().mapToDouble(Edge::scatter).max().orElseThrow();
        return new Cornered(quad, lens, support, bow, error);
    }

    private static List<Spot> line(Edge edge) {
        return List.of(edge.at(0), edge.at(0.25), edge.at(0.5), edge.at(0.75), edge.at(1));
    }

    /** Near a corner an edge is as good as straight, so its last eighth is prolonged to meet the next one's first. */
    private static @org.jspecify.annotations.Nullable Quad crossed(List<Edge> edges) {
        List<Spot> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Edge before = edges.get((i + 3) & 3);
            Edge after = edges.get(i);
            Spot a = before.at(0.875);
            Spot b = before.at(1);
            Spot c = after.at(0.125);
            Spot d = after.at(0);
            double det = (b.x() - a.x()) * (c.y() - d.y()) - (b.y() - a.y()) * (c.x() - d.x());
            if (!(Math.abs(det) > 0)) {
                return null;
            }
            double s = ((c.x() - a.x()) * (c.y() - d.y()) - (c.y() - a.y()) * (c.x() - d.x())) / det;
            if (!(Math.abs(s) < 10)) {
                return null;
            }
            corners.add(new Spot(a.x() + s * (b.x() - a.x()), a.y() + s * (b.y() - a.y())));
        }
        return Quad.of(corners);
    }
}
