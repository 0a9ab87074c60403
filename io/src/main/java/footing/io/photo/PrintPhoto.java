package footing.io.photo;

import footing.core.ground.PrintOutline;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Measures a print of a tire on a photo: area, length, width and shape, with the perspective and one term of the
 * lens's bend taken out. Any size, orientation and tilt up to about 35°; what is beyond says it is unsure.
 */
public final class PrintPhoto {
    /** Edges bent by more than this share of their length after correction leave the area unsure by a percent or so. */
    static final double MOST_BOW = 0.0025;

    private static final double MOST_ERROR = 0.012;
    private static final double POINTED_ERROR = 3;
    private static final double SNAP = 0.02;
    /** Fewer pixels of a print leave less than fifteen to a rib. */
    private static final double FEWEST_PIXELS = 8000;

    private static final double SQUARE = 1.05;
    private static final double MARGIN = 0.012;
    private static final double FARTHEST = 8;
    private static final int FINE = 800;
    private static final int FINE_BESIDE = 1200;
    private static final int COARSE = 2;

    private final Picture picture;
    private final PrintAsked asked;
    private final List<Doubt> doubts = new ArrayList<>();
    private final Overlay overlay;

    private PrintPhoto(Picture picture, PrintAsked asked) {
        this.picture = picture;
        this.asked = asked;
        overlay = Overlay.of(picture);
    }

    /** Reads a JPEG or PNG file; gives a {@link PrintSeen} or {@link Seen.Refused}. */
    public static Seen read(byte[] file, PrintAsked asked) {
        Decoded decoded = PictureFile.decode(file);
        return decoded instanceof Decoded.Opened o
                ? new PrintPhoto(o.picture(), asked).seen()
                : refused((Decoded.Unreadable) decoded);
    }

    static Seen.Refused refused(Decoded.Unreadable u) {
        return new Seen.Refused(u.what(), u.advice());
    }

    private PrintSeen seen() {
        Cornered cornered = cornered();
        Plane plane = cornered == null ? null : plane(cornered);
        if (cornered == null || plane == null) {
            doubts.add(Doubt.NO_CARD);
            return new PrintSeen(null, 0, List.of(), List.of(), doubts, overlay);
        }
        overlay.card(cornered.quad().corners());
        if (!(cornered.bow() <= MOST_BOW && Math.abs(cornered.lens().bend()) < Lens.MOST)) {
            doubts.add(Doubt.BENT);
        }
        List<PrintOutline.Point> border = asked.border().isEmpty() ? found(plane) : pointed(plane);
        List<Spot> seen = border.stream().map(p -> plane.seen(p.x(), p.y())).toList();
        overlay.border(seen);
        if (!seen.isEmpty() && Hull.enclosed(seen) < FEWEST_PIXELS) {
            doubts.add(Doubt.SMALL);
        }
        PrintOutline outline = outline(border);
        double error = outline == null ? 0 : error(cornered, seen);
        if (!(error <= MOST_ERROR)) {
            doubts.add(Doubt.SCALE);
        }
        return new PrintSeen(outline, error, outer(cornered.quad().corners()), outer(seen), doubts, overlay);
    }

    private List<Spot> outer(List<Spot> spots) {
        return spots.stream().map(picture::outer).toList();
    }

    private @Nullable Cornered cornered() {
        if (asked.corners().isEmpty()) {
            return new CornerFinder(picture, asked.card()).find();
        }
        Quad quad = Quad.of(asked.corners().stream().map(picture::inner).toList());
        return quad == null ? null : snapped(quad, picture);
    }

    /** The edges near corners by hand, if they are seen; else the corners as they are. */
    static Cornered snapped(Quad quad, Picture picture) {
        for (Tone tone : List.of(Tone.ofLeast(picture), Tone.ofDark(picture))) {
            Cornered found = Cornered.follow(tone, quad, SNAP);
            if (found.support() >= CornerFinder.LEAST_SUPPORT && found.quad().isNear(quad, SNAP * quad.shortest())) {
                return found;
            }
        }
        return Cornered.pointed(quad, picture.width(), picture.height(), POINTED_ERROR / picture.thinned());
    }

    /** With the card's longer side where a camera would see it; x runs along the longer one. */
    private @Nullable Plane plane(Cornered cornered) {
        Card card = asked.card();
        Plane first = Plane.of(cornered.quad(), cornered.lens(), card.longer(), card.shorter());
        Plane second = Plane.of(cornered.quad().turned(), cornered.lens(), card.longer(), card.shorter());
        if (first == null || second == null) {
            return null;
        }
        double one = first.strangeness();
        double other = second.strangeness();
        if (card.longer() > SQUARE * card.shorter() && Math.abs(one - other) < 0.03) {
            doubts.add(Doubt.SIDES);
        }
        return one <= other ? first : second;
    }

    private List<PrintOutline.Point> pointed(Plane plane) {
        List<PrintOutline.Point> border = new ArrayList<>();
        for (Spot spot : asked.border()) {
            Spot ground = plane.ground(picture.inner(spot));
            border.add(new PrintOutline.Point(ground.x(), ground.y()));
        }
        return border;
    }

    private List<PrintOutline.Point> found(Plane plane) {
        // On the sheet, or on a light floor, ink is darker; chalk on a dark ground is lighter.
        Traced dark = traced(plane, Tone.ofLeast(picture));
        boolean clear = dark != null && dark.doubts().isEmpty() && asked.card().place() == Card.Place.UNDER;
        Traced light = clear ? null : traced(plane, Tone.ofDark(picture));
        Traced best = dark == null || (light != null && light.worth() > dark.worth()) ? light : dark;
        if (best == null) {
            doubts.add(Doubt.NO_PRINT);
            return List.of();
        }
        doubts.addAll(best.doubts());
        return best.border().points();
    }

    private @Nullable Traced traced(Plane plane, Tone tone) {
        Canvas.Part part = part(plane);
        double longest = Math.max(part.right() - part.left(), part.bottom() - part.top());
        int pixels = asked.card().place() == Card.Place.BESIDE ? FINE_BESIDE : FINE;
        Canvas fine = Canvas.of(plane, tone, part, longest / pixels);
        if (asked.card().place() == Card.Place.BESIDE) {
            double m = MARGIN * asked.card().longer();
            fine.exclude(new Canvas.Part(
                    -m, -m, asked.card().longer() + m, asked.card().shorter() + m));
        }
        Canvas coarse = fine.reduced(COARSE);
        Blob blob = new BlobFinder(coarse).find();
        return blob == null ? null : new Traced(blob, Border.of(fine, coarse, blob));
    }

    /** The sheet without its rim, or the ground around the card as far as the picture shows it. */
    private Canvas.Part part(Plane plane) {
        double longer = asked.card().longer();
        double shorter = asked.card().shorter();
        if (asked.card().place() == Card.Place.UNDER) {
            double m = MARGIN * longer;
            return new Canvas.Part(m, m, longer - m, shorter - m);
        }
        double[] x = {0, longer};
        double[] y = {0, shorter};
        int right = picture.width() - 1;
        int bottom = picture.height() - 1;
        for (Spot corner : List.of(new Spot(0, 0), new Spot(right, 0), new Spot(0, bottom), new Spot(right, bottom))) {
            Spot ground = plane.ground(corner);
            x[0] = Math.min(x[0], ground.x());
            x[1] = Math.max(x[1], ground.x());
            y[0] = Math.min(y[0], ground.y());
            y[1] = Math.max(y[1], ground.y());
        }
        double far = FARTHEST * longer;
        return new Canvas.Part(Math.max(-far, x[0]), Math.max(-far, y[0]), Math.min(far, x[1]), Math.min(far, y[1]));
    }

    private @Nullable PrintOutline outline(List<PrintOutline.Point> border) {
        if (border.isEmpty()) {
            return null;
        }
        double rolling = asked.rolling() == PrintAsked.Rolling.LONG_SIDE ? 0 : Math.PI / 2;
        PrintOutline outline;
        try {
            outline = PrintOutline.of(border, rolling);
        } catch (IllegalArgumentException e) {
            // A border by hand may enclose nothing.
            doubts.add(Doubt.NO_PRINT);
            return null;
        }
        if (outline.misfit() > 0.04) {
            doubts.add(Doubt.ODD);
        }
        return outline;
    }

    /** Moves each corner by its error, each way in turn, and sees what becomes of the scale at the print. */
    private double error(Cornered cornered, List<Spot> border) {
        double x = border.stream().mapToDouble(Spot::x).average().orElseThrow();
        double y = border.stream().mapToDouble(Spot::y).average().orElseThrow();
        Spot middle = new Spot(x, y);
        Card card = asked.card();
        double sum = 0;
        double here = 0;
        for (int i = -1; i < 8; i++) {
            List<Spot> moved = new ArrayList<>(cornered.quad().corners());
            if (i >= 0) {
                Spot old = moved.get(i / 2);
                double by = cornered.error();
                moved.set(i / 2, new Spot(old.x() + (i % 2 == 0 ? by : 0), old.y() + (i % 2 == 0 ? 0 : by)));
            }
            Plane plane = Plane.of(new Quad(moved), cornered.lens(), card.longer(), card.shorter());
            double pixel = plane == null ? 0 : plane.areaOfPixel(middle);
            if (i < 0) {
                here = pixel;
            } else {
                sum += (pixel / here - 1) * (pixel / here - 1);
            }
        }
        return Math.sqrt(sum);
    }
}
