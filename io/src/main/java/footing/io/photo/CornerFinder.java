package footing.io.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.alg.filter.binary.ThresholdImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_I32;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the card: four-sided blobs at many levels of a small version of the picture, as it is and with its light evened
 * out, whose edges are then followed in the picture itself. Taken is the one that an ordinary camera could see like
 * that and whose edges are seen best.
 */
final class CornerFinder {
    /** A card is called found if this share of each edge is seen. */
    static final double LEAST_SUPPORT = 0.55;

    /** And if no angle between its sides and no ratio of them is stranger than this, see {@link Plane#strangeness}. */
    static final double MOST_STRANGE = 0.08;

    private static final int SMALL = 700;
    private static final int LEVELS = 14;
    private static final int MOST_FOLLOWED = 12;
    private static final double REACH = 0.03;

    private final Picture picture;
    private final Card card;

    CornerFinder(Picture picture, Card card) {
        this.picture = picture;
        this.card = card;
    }

    /** A card that is lighter than what it lies on, or else one that is darker; null if there is none. */
    @Nullable
    Cornered find() {
        Cornered light = find(Tone.ofLeast(picture));
        return light != null ? light : find(Tone.ofDark(picture));
    }

    private @Nullable Cornered find(Tone tone) {
        GrayU8 shade = tone.pixels();
        int factor = (int) Math.ceil(Math.max(shade.width, shade.height) / (double) SMALL);
        GrayU8 small = Tone.reduced(shade, factor);
        List<Quad> guesses = guesses(small, factor);
        Cornered best = null;
        double most = 0;
        for (Quad guess : guesses) {
            Cornered found = Cornered.follow(tone, guess, REACH);
            double worth = worth(found);
            if (worth > most) {
                most = worth;
                best = found;
            }
        }
        return best;
    }

    private double worth(Cornered found) {
        if (!(found.support() >= LEAST_SUPPORT)) {
            return 0;
        }
        double strange = Math.min(strangeness(found, true), strangeness(found, false));
        double size = Math.sqrt(found.quad().area() / ((double) picture.width() * picture.height()));
        return strange <= MOST_STRANGE ? found.support() * Math.sqrt(size) * (1 - strange / MOST_STRANGE / 2) : 0;
    }

    /** With the card's width along the first side or along the second. */
    double strangeness(Cornered found, boolean first) {
        double width = first ? card.width().meters() : card.height().meters();
        double height = first ? card.height().meters() : card.width().meters();
        Plane plane = Plane.of(found.quad(), found.lens(), width, height);
        return plane == null ? Double.MAX_VALUE : plane.strangeness();
    }

    private List<Quad> guesses(GrayU8 small, int factor) {
        List<Quad> quads = new ArrayList<>();
        collect(small, quads);
        collect(evened(small), quads);
        quads.sort(Comparator.comparingDouble(Quad::area).reversed());
        List<Quad> distinct = new ArrayList<>();
        for (Quad quad : quads) {
            if (distinct.size() < MOST_FOLLOWED
                    && distinct.stream().noneMatch(d -> d.isNear(quad, 0.02 * quad.shortest()))) {
                distinct.add(quad);
            }
        }
        return distinct.stream().map(q -> scaled(q, factor)).toList();
    }

    /** Pixel i of the small picture is the mean of those around i·f + (f − 1)/2. */
    private static Quad scaled(Quad quad, int factor) {
        double shift = (factor - 1) / 2.0;
        return new Quad(quad.corners().stream()
                .map(s -> new Spot(s.x() * factor + shift, s.y() * factor + shift))
                .toList());
    }

    private void collect(GrayU8 shade, List<Quad> to) {
        int low = level(shade, 0.05);
        int high = level(shade, 0.995);
        GrayU8 binary = new GrayU8(shade.width, shade.height);
        for (int i = 1; i < LEVELS; i++) {
            int level = low + (high - low) * i / LEVELS;
            ThresholdImageOps.threshold(shade, binary, level, false);
            for (Contour contour : BinaryImageOps.contourExternal(binary, ConnectRule.FOUR)) {
                Quad quad = quad(contour.external, shade);
                if (quad != null) {
                    to.add(quad);
                }
            }
        }
    }

    private @Nullable Quad quad(List<Point2D_I32> contour, GrayU8 shade) {
        double least = (card.place() == Card.Place.BESIDE ? 0.03 : 0.15) * Math.max(shade.width, shade.height);
        if (contour.size() < 4 * least) {
            return null;
        }
        Hull hull = Hull.of(contour);
        double blob =
                Hull.enclosed(contour.stream().map(p -> new Spot(p.x, p.y)).toList());
        if (!(blob >= 0.75 * hull.area())) {
            return null;
        }
        Quad quad = hull.quad();
        return quad != null && quad.shortest() >= least / 2 && hull.area() >= 0.85 * quad.area() ? quad : null;
    }

    /** Divided by the mean around, so that a shadow counts less than paper. */
    private static GrayU8 evened(GrayU8 shade) {
        int radius = Math.max(shade.width, shade.height) / 6;
        GrayU8 around = BlurImageOps.mean(shade, null, radius, null, null);
        GrayU8 evened = new GrayU8(shade.width, shade.height);
        for (int i = 0; i < evened.data.length; i++) {
            int share = 110 * (shade.data[i] & 0xFF) / Math.max(8, around.data[i] & 0xFF);
            evened.data[i] = (byte) Math.min(255, share);
        }
        return evened;
    }

    /** The shade that a share of the pixels doesn't exceed. */
    static int level(GrayU8 shade, double share) {
        int[] counts = new int[256];
        for (byte b : shade.data) {
            counts[b & 0xFF]++;
        }
        long left = Math.round(share * shade.data.length);
        int level = 0;
        while (level < 255 && left > counts[level]) {
            left -= counts[level++];
        }
        return level;
    }
}
