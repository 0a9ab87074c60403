package footing.io.photo;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One photo of a turn: which ground is judged, and how much of it each pixel shows. */
final class TurfView {
    private final Picture picture;
    private final Greenness greenness;
    /** 1 where a pixel is judged. */
    private final GrayU8 judged;

    private final Quad frame;
    private final Plane plane;
    private final Overlay overlay;

    private TurfView(Picture picture, Quad frame, Plane plane, GrayU8 judged, Overlay overlay) {
        this.picture = picture;
        this.frame = frame;
        this.plane = plane;
        this.judged = judged;
        this.overlay = overlay;
        greenness = new Greenness(picture);
    }

    /** Null if the frame is not found; doubts about it are added. */
    static @Nullable TurfView of(
            Picture picture, TurfAsked asked, TurfAsked.ByHand byHand, Overlay overlay, List<Doubt> doubts) {
        Card frame = asked.frame();
        Cornered cornered;
        if (byHand.corners().isEmpty()) {
            cornered = new CornerFinder(picture, frame).find();
        } else {
            Quad quad = Quad.of(byHand.corners().stream().map(picture::inner).toList());
            cornered = quad == null ? null : PrintPhoto.snapped(quad, picture);
        }
        Plane plane = cornered == null ? null : plane(cornered, frame);
        if (cornered == null || plane == null) {
            return null;
        }
        if (!(cornered.bow() <= 4 * PrintPhoto.MOST_BOW)) {
            doubts.add(Doubt.BENT);
        }
        overlay.card(cornered.quad().corners());
        List<Spot> border = byHand.border().stream().map(picture::inner).toList();
        outlines(plane, asked, border).forEach(overlay::border);
        return new TurfView(picture, cornered.quad(), plane, judged(picture, plane, asked, border), overlay);
    }

    /** The frame's corners in the file's pixels. */
    List<Spot> corners() {
        return frame.corners().stream().map(picture::outer).toList();
    }

    /** What bounds the ground that is judged. */
    private static List<List<Spot>> outlines(Plane plane, TurfAsked asked, List<Spot> border) {
        if (!border.isEmpty()) {
            return List.of(border);
        }
        double longer = asked.frame().longer();
        double shorter = asked.frame().shorter();
        double rim = TurfAsked.RIM * shorter;
        TurfAsked.Ring ring = asked.ring();
        if (ring == null) {
            return List.of(List.of(
                    plane.seen(rim, rim),
                    plane.seen(longer - rim, rim),
                    plane.seen(longer - rim, shorter - rim),
                    plane.seen(rim, shorter - rim)));
        }
        List<List<Spot>> circles = new ArrayList<>();
        for (double radius : new double[] {ring.inner().meters(), ring.outer().meters()}) {
            List<Spot> circle = new ArrayList<>();
            for (int degree = 0; degree < 360 && radius > 0; degree += 5) {
                double angle = Math.toRadians(degree);
                circle.add(plane.seen(longer / 2 + radius * Math.cos(angle), shorter / 2 + radius * Math.sin(angle)));
            }
            circles.add(circle);
        }
        return circles;
    }

    private static @Nullable Plane plane(Cornered cornered, Card frame) {
        Plane first = Plane.of(cornered.quad(), cornered.lens(), frame.longer(), frame.shorter());
        Plane second = Plane.of(cornered.quad().turned(), cornered.lens(), frame.longer(), frame.shorter());
        return first == null || second == null || first.strangeness() <= second.strangeness() ? first : second;
    }

    private static GrayU8 judged(Picture picture, Plane plane, TurfAsked asked, List<Spot> border) {
        GrayU8 judged = new GrayU8(picture.width(), picture.height());
        double longer = asked.frame().longer();
        double shorter = asked.frame().shorter();
        double rim = TurfAsked.RIM * shorter;
        TurfAsked.Ring ring = asked.ring();
        for (int y = 0; y < judged.height; y++) {
            for (int x = 0; x < judged.width; x++) {
                boolean in;
                if (!border.isEmpty()) {
                    in = isInside(border, x, y);
                } else {
                    Spot g = plane.ground(new Spot(x, y));
                    in = g.x() > rim && g.y() > rim && g.x() < longer - rim && g.y() < shorter - rim;
                    double r = Math.hypot(g.x() - longer / 2, g.y() - shorter / 2);
                    in &= ring == null
                            || (r >= ring.inner().meters() && r <= ring.outer().meters());
                }
                judged.data[y * judged.width + x] = (byte) (in ? 1 : 0);
            }
        }
        return judged;
    }

    /** Counts the border's crossings of a line to the right. */
    private static boolean isInside(List<Spot> border, double x, double y) {
        boolean inside = false;
        for (int i = 0; i < border.size(); i++) {
            Spot a = border.get(i);
            Spot b = border.get((i + 1) % border.size());
            if (a.y() > y != b.y() > y && x < a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private boolean isJudged(int x, int y) {
        return judged.data[y * judged.width + x] == 1;
    }

    /** Adds its values to a histogram. */
    void count(int[] histogram) {
        for (int y = 0; y < judged.height; y++) {
            for (int x = 0; x < judged.width; x++) {
                if (isJudged(x, y)) {
                    Greenness.count(histogram, greenness.at(x, y));
                }
            }
        }
    }

    /**
     * What is bare of it.
     *
     * @param share by area on the ground
     * @param near share too near the level to tell
     * @param brightness mean, of 255
     */
    record Bare(double share, double near, double brightness) {}

    /** Below the level; a pixel counts by the ground that it covers, and tints the overlay. */
    Bare bare(double level, double unsure) {
        double all = 0;
        double bare = 0;
        double near = 0;
        double bright = 0;
        for (int y = 0; y < judged.height; y++) {
            double[] weights = weights(y);
            for (int x = 0; x < judged.width; x++) {
                if (isJudged(x, y)) {
                    double weight = weights[0] + x * (weights[1] - weights[0]) / judged.width;
                    double green = greenness.at(x, y);
                    all += weight;
                    bare += green < level ? weight : 0;
                    near += Math.abs(green - level) < unsure ? weight : 0;
                    bright += weight * greenness.brightness(x, y);
                }
            }
        }
        overlay.tint((x, y) -> isJudged(x, y) && greenness.at(x, y) < level ? 1 : 0);
        return all > 0 ? new Bare(bare / all, near / all, bright / all) : new Bare(0, 1, 0);
    }

    /** Ground covered by a pixel at both ends of a row; between them it changes slowly. */
    private double[] weights(int y) {
        return new double[] {plane.areaOfPixel(new Spot(0, y)), plane.areaOfPixel(new Spot(picture.width() - 1.0, y))};
    }
}
