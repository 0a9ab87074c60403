package footing.io.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Measures a dark print on a white sheet of known size: finds the four corners or takes those given, removes the
 * perspective, evens out shadows, and counts what is darker than half the paper.
 *
 * <p>Perspective alone is removed. A lens that bows the edge of the sheet by one part in two hundred of its length
 * changes the area by about one percent; a picture taken from nearer than the sheet is long may bow more.
 */
public final class PrintReader {
    private static final double THRESHOLD = 0.55;
    private static final double THRESHOLD_STEP = 0.12;
    private static final double MOST_CHANGE = 0.03;
    private static final double LEAST_PIXELS = 120_000;
    private static final double MOST_TILT = 3.2;

    private PrintReader() {}

    /** A print, and the picture to check it by. */
    public record Read(Print print, BufferedImage overlay) {}

    /**
     * Measures a print.
     *
     * @param corners of the sheet in pixels of the upright picture, going round; null finds them
     * @throws PhotoTrouble if there is no print to measure
     * @throws IOException if the file can't be read
     */
    public static Read read(Path file, Sheet sheet, @Nullable List<Spot> corners) throws IOException, PhotoTrouble {
        Photo photo = Photo.read(file);
        int thinned = photo.thinned();
        List<Spot> given = corners == null
                ? null
                : corners.stream()
                        .map(c -> new Spot(c.x() / thinned, c.y() / thinned))
                        .toList();
        return read(photo.image(), sheet, given);
    }

    static Read read(BufferedImage picture, Sheet sheet, @Nullable List<Spot> corners) throws PhotoTrouble {
        List<Spot> found = corners == null ? CornerFinder.find(picture) : corners;
        List<Spot> ordered = Corners.ordered(found, sheet.width(), sheet.length());
        Plane plane = Plane.of(ordered, sheet.width(), sheet.length());
        Flattened flat = Flattened.of(picture, plane, sheet);
        int width = flat.image().getWidth();
        double[] shares = Paper.shares(flat.brightness(), width, flat.image().getHeight());
        Ink ink = Ink.of(shares, width, THRESHOLD);
        if (ink.patches().isEmpty()) {
            throw new PhotoTrouble("no print is seen on the sheet", "ink or chalk the tire darker than the paper");
        }
        List<Spot> hull = ink.hull();
        Outline outline = Outline.of(hull, flat.scale());
        double area = ink.pixels() / (flat.scale() * flat.scale());
        List<Print.Doubt> doubts = doubts(plane, sheet, ordered);
        double less = Ink.of(shares, width, THRESHOLD - THRESHOLD_STEP).pixels();
        double more = Ink.of(shares, width, THRESHOLD + THRESHOLD_STEP).pixels();
        if (!((more - less) / 2 <= MOST_CHANGE * ink.pixels())) {
            doubts.add(Print.Doubt.SOFT_EDGE);
        }
        if (ink.touchesRim()) {
            doubts.add(Print.Doubt.AT_THE_RIM);
        }
        Print print = new Print(
                area, outline.area(), outline.longSide(), outline.shortSide(), outline.exponent(), doubts);
        return new Read(print, Overlay.of(picture, plane, ordered, hull, flat.scale()));
    }

    private static List<Print.Doubt> doubts(Plane plane, Sheet sheet, List<Spot> corners) {
        List<Print.Doubt> doubts = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < 4; i++) {
            double u = i == 1 || i == 2 ? sheet.width() : 0;
            double density = plane.pixelsPerArea(u, i >= 2 ? sheet.length() : 0);
            least = Math.min(least, density);
            most = Math.max(most, density);
        }
        if (!(most / least <= MOST_TILT)) {
            doubts.add(Print.Doubt.TILTED);
        }
        double pixels = Math.abs(corners.get(0).turn(corners.get(1), corners.get(2))
                        + corners.get(0).turn(corners.get(2), corners.get(3)))
                / 2;
        if (!(pixels >= LEAST_PIXELS)) {
            doubts.add(Print.Doubt.SMALL);
        }
        return doubts;
    }
}
