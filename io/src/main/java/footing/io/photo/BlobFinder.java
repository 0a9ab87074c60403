package footing.io.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.alg.filter.binary.ThresholdImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_I32;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the patch with the clearest border at any level: the ink, not a shadow across the sheet, whose border is weaker
 * and which runs off the sheet. Gaps of a tread narrower than {@value #GAP} m are closed.
 */
final class BlobFinder {
    /** Grooves up to this width count as part of the print. */
    static final double GAP = 0.012;

    private static final int LEVELS = 20;
    private static final double LEAST_SHARE = 0.004;
    private static final double MOST_SHARE = 0.9;

    private final Canvas canvas;
    private final GrayU8 shade;
    private final int closing;
    private final double usable;

    /** On a canvas whose ink is dark. */
    BlobFinder(Canvas canvas) {
        this.canvas = canvas;
        this.shade = canvas.tone().pixels();
        closing = (int) Math.round(GAP / 2 / canvas.pixel());
        int count = 0;
        for (byte b : canvas.usable().data) {
            count += b;
        }
        usable = count;
    }

    @Nullable
    Blob find() {
        Blob best = null;
        int low = level(0.002);
        int high = level(0.9);
        for (int i = 1; i < LEVELS; i++) {
            Blob blob = at(low + (high - low) * i / LEVELS);
            if (blob != null && (best == null || blob.worth() > best.worth())) {
                best = blob;
            }
        }
        return best;
    }

    private int level(double share) {
        int[] counts = new int[256];
        for (int i = 0; i < shade.data.length; i++) {
            counts[shade.data[i] & 0xFF] += canvas.usable().data[i];
        }
        double left = share * usable;
        int level = 0;
        while (level < 255 && left > counts[level]) {
            left -= counts[level++];
        }
        return level;
    }

    private @Nullable Blob at(int level) {
        GrayU8 ink = new GrayU8(shade.width, shade.height);
        ThresholdImageOps.threshold(shade, ink, level, true);
        for (int i = 0; i < ink.data.length; i++) {
            ink.data[i] &= canvas.usable().data[i];
        }
        GrayU8 closed =
                closing > 0 ? BinaryImageOps.erode8(BinaryImageOps.dilate8(ink, closing, null), closing, null) : ink;
        GrayS32 labels = new GrayS32(shade.width, shade.height);
        List<Contour> contours = BinaryImageOps.contour(closed, ConnectRule.FOUR, labels);
        int best = -1;
        double most = 0;
        double[] areas = new double[contours.size()];
        for (int i = 0; i < areas.length; i++) {
            double worth = worth(contours.get(i).external, areas, i);
            if (worth > most) {
                most = worth;
                best = i;
            }
        }
        if (best < 0) {
            return null;
        }
        int chosen = best;
        double second = java.util.stream.IntStream.range(0, areas.length)
                .filter(i -> i != chosen)
                .mapToDouble(i -> areas[i])
                .max()
                .orElse(0);
        return new Blob(mask(labels, best + 1), areas[best], most, second);
    }

    private static GrayU8 mask(GrayS32 labels, int label) {
        GrayU8 mask = new GrayU8(labels.width, labels.height);
        for (int i = 0; i < mask.data.length; i++) {
            mask.data[i] = (byte) (labels.data[i] == label ? 1 : 0);
        }
        return mask;
    }

    /** The clearness of the border, times how full and how large the patch is; 0 for what can't be a print. */
    private double worth(List<Point2D_I32> contour, double[] areas, int i) {
        if (contour.size() < 12 || touches(contour)) {
            return 0;
        }
        double area =
                Hull.enclosed(contour.stream().map(p -> new Spot(p.x, p.y)).toList());
        areas[i] = area;
        if (!(area >= LEAST_SHARE * usable && area <= MOST_SHARE * usable)) {
            return 0;
        }
        double full = area / Math.max(area, Hull.of(contour).area());
        return clearness(contour) * full * full * full * Math.pow(area / usable, 0.3);
    }

    private boolean touches(List<Point2D_I32> contour) {
        for (Point2D_I32 p : contour) {
            for (int j = -2; j <= 2; j += 2) {
                for (int i = -2; i <= 2; i += 2) {
                    int x = p.x + i;
                    int y = p.y + j;
                    boolean inside = x >= 0 && y >= 0 && x < shade.width && y < shade.height;
                    if (!inside || canvas.usable().data[y * shade.width + x] == 0) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The gradient that three quarters of the border exceed. */
    private double clearness(List<Point2D_I32> contour) {
        double[] steps = new double[contour.size()];
        for (int i = 0; i < steps.length; i++) {
            Point2D_I32 p = contour.get(i);
            int at = p.y * shade.width + p.x;
            double dx = (shade.data[at + 2] & 0xFF) - (shade.data[at - 2] & 0xFF);
            double dy = (shade.data[at + 2 * shade.width] & 0xFF) - (shade.data[at - 2 * shade.width] & 0xFF);
            steps[i] = Math.hypot(dx, dy);
        }
        Arrays.sort(steps);
        return steps[steps.length / 4];
    }
}
