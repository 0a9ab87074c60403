package footing.io.photo;

import boofcv.alg.filter.binary.GThresholdImageOps;
import boofcv.alg.filter.binary.ThresholdImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.alg.shapes.polygon.DetectPolygonBinaryGrayRefine;
import boofcv.factory.shape.ConfigPolygonDetector;
import boofcv.factory.shape.FactoryShapeDetector;
import boofcv.struct.ConfigLength;
import boofcv.struct.image.GrayU8;
import georegression.struct.shapes.Polygon2D_F64;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the corners of a white sheet: white is where the least of red, green and blue is high, which turf never is, and a
 * print on the sheet is a hole in it.
 */
final class CornerFinder {
    private static final double LEAST_SHARE = 0.04;

    private CornerFinder() {}

    /** The four corners of the largest white quadrilateral, going round. */
    static List<Spot> find(BufferedImage image) throws PhotoTrouble {
        int w = image.getWidth();
        int h = image.getHeight();
        GrayU8 dark = darkness(image);
        GrayU8 binary = new GrayU8(w, h);
        ThresholdImageOps.threshold(dark, binary, (int) GThresholdImageOps.computeOtsu(dark, 0, 255), true);
        ConfigPolygonDetector config = new ConfigPolygonDetector(4, 4);
        config.detector.minimumContour = ConfigLength.fixed(0.4 * Math.min(w, h));
        DetectPolygonBinaryGrayRefine<GrayU8> detector = FactoryShapeDetector.polygon(config, GrayU8.class);
        detector.process(dark, binary);
        Polygon2D_F64 best = null;
        for (Polygon2D_F64 found : detector.getPolygons(null, null)) {
            if (best == null || found.areaSimple() > best.areaSimple()) {
                best = found;
            }
        }
        if (best == null || best.areaSimple() < LEAST_SHARE * w * h) {
            throw new PhotoTrouble(
                    "no white sheet with four corners is seen", "show the whole sheet, or name its corners");
        }
        List<Spot> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            // A pixel's middle is half a pixel from its corner.
            corners.add(new Spot(best.get(i).x, best.get(i).y));
        }
        return corners;
    }

    /** The picture with white for black, a little blurred. */
    private static GrayU8 darkness(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        GrayU8 dark = new GrayU8(w, h);
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                int c = row[x];
                int least = Math.min(c >> 16 & 255, Math.min(c >> 8 & 255, c & 255));
                dark.data[y * w + x] = (byte) (255 - least);
            }
        }
        return BlurImageOps.gaussian(dark, null, -1, 1, null);
    }
}
