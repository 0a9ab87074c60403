package footing.io.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The edge of a card along one of its sides, found where the shade changes most across the side.
 */
final class Edge {
    private static final int PLACES = 60;
    private static final double MARGIN = 0.04;
    private static final double LEAST_STEP = 10;
    private static final double TRIM = 2.5;
    private static final double FINEST = 0.4;

    private final Spot from;
    private final Spot to;
    /** Its distance from the guessed side in pixels, outward, as c₀ + c₁·t + c₂·t² for t from 0 to 1. */
    private final double[] curve;

    private final double support;
    private final double scatter;

    private Edge(Spot from, Spot to, double[] curve, double support, double scatter) {
        this.from = from;
        this.to = to;
        this.curve = curve;
        this.support = support;
        this.scatter = scatter;
    }

    /** Share of the places looked at where there is an edge and it lies on the curve. */
    double support() {
        return support;
    }

    /** Standard error of the curve's ends in pixels. */
    double scatter() {
        return scatter;
    }

    /** Looks for it within {@code reach} pixels of the side between two corners, the card on the right-hand side. */
    static Edge near(Tone tone, Spot from, Spot to, double reach) {
        double[] t = new double[PLACES];
        double[] offset = new double[PLACES];
        int n = 0;
        double length = from.to(to);
        double nx = (to.y() - from.y()) / length;
        double ny = -(to.x() - from.x()) / length;
        for (int i = 0; i < PLACES; i++) {
            double at = MARGIN + (1 - 2 * MARGIN) * i / (PLACES - 1);
            double x = from.x() + at * (to.x() - from.x());
            double y = from.y() + at * (to.y() - from.y());
            double found = steepest(tone, new double[] {x, y, nx, ny}, reach);
            if (!Double.isNaN(found)) {
                t[n] = at;
                offset[n++] = found;
            }
        }
        return fitted(from, to, Arrays.copyOf(t, n), Arrays.copyOf(offset, n));
    }

    /** Where along the outward normal the card gives way to darker ground; NaN if nowhere. */
    private static double steepest(Tone tone, double[] at, double reach) {
        int n = (int) Math.ceil(reach);
        double[] shade = new double[2 * n + 7];
        for (int i = 0; i < shade.length; i++) {
            double d = i - n - 3;
            double x = at[0] + d * at[2];
            double y = at[1] + d * at[3];
            if (!tone.covers(x, y)) {
                return Double.NaN;
            }
            shade[i] = tone.at(x, y);
        }
        double most = LEAST_STEP;
        int best = -1;
        double[] step = new double[shade.length];
        for (int i = 2; i < shade.length - 2; i++) {
            step[i] = (shade[i - 1] + shade[i - 2] - shade[i + 1] - shade[i + 2]) / 2;
            if (i >= 3 && i < shade.length - 3 && step[i] > most) {
                most = step[i];
                best = i;
            }
        }
        if (best < 0) {
            return Double.NaN;
        }
        double bend = step[best - 1] - 2 * step[best] + step[best + 1];
        double part = bend < 0 ? (step[best - 1] - step[best + 1]) / (2 * bend) : 0;
        return best - n - 3 + Math.max(-1, Math.min(1, part));
    }

    private static Edge fitted(Spot from, Spot to, double[] t, double[] offset) {
        if (t.length < PLACES / 3) {
            return new Edge(from, to, new double[3], 0, Double.MAX_VALUE);
        }
        double[] curve = consensus(t, offset, from.to(to));
        double noise = FINEST;
        List<Integer> kept = List.of();
        for (int round = 0; round < 4; round++) {
            double limit = round == 0 ? coarse(from.to(to)) : Math.max(2 * FINEST, TRIM * noise);
            kept = within(t, offset, curve, limit);
            if (kept.size() < PLACES / 3) {
                return new Edge(from, to, curve, 0, Double.MAX_VALUE);
            }
            curve = Parabola.through(t, offset, kept);
            noise = Math.max(0.05, spread(t, offset, curve, kept));
        }
        double error = 3 * noise / Math.sqrt(kept.size());
        return new Edge(from, to, curve, kept.size() / (double) PLACES, error);
    }

    private static double coarse(double length) {
        return Math.max(2, 0.006 * length);
    }

    /** The straight line through two of the places that most others lie on. */
    private static double[] consensus(double[] t, double[] offset, double length) {
        double[] best = new double[3];
        int most = -1;
        int gap = t.length / 4;
        for (int i = 0; i < t.length; i++) {
            for (int j = i + gap; j < t.length; j += 2) {
                double slope = (offset[j] - offset[i]) / (t[j] - t[i]);
                double[] line = {offset[i] - slope * t[i], slope, 0};
                int agree = agreeing(t, offset, line, coarse(length));
                if (agree > most) {
                    most = agree;
                    best = line;
                }
            }
        }
        return best;
    }

    private static int agreeing(double[] t, double[] offset, double[] line, double limit) {
        int agree = 0;
        for (int i = 0; i < t.length; i++) {
            agree += Math.abs(offset[i] - Parabola.at(line, t[i])) <= limit ? 1 : 0;
        }
        return agree;
    }

    private static List<Integer> within(double[] t, double[] offset, double[] curve, double limit) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < t.length; i++) {
            if (Math.abs(offset[i] - Parabola.at(curve, t[i])) <= limit) {
                kept.add(i);
            }
        }
        return kept;
    }

    private static double spread(double[] t, double[] offset, double[] curve, List<Integer> kept) {
        double sum = 0;
        for (int i : kept) {
            double off = offset[i] - Parabola.at(curve, t[i]);
            sum += off * off;
        }
        return Math.sqrt(sum / kept.size());
    }

    /** The place on the edge at t. */
    Spot at(double t) {
        double length = from.to(to);
        double out = Parabola.at(curve, t);
        return new Spot(
                from.x() + t * (to.x() - from.x()) + out * (to.y() - from.y()) / length,
                from.y() + t * (to.y() - from.y()) - out * (to.x() - from.x()) / length);
    }
}
