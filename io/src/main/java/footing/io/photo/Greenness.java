package footing.io.photo;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayU8;

/**
 * Excess green of a picture, (2g − r − b)/(r + g + b): far above 0 for grass, about 0 or less for soil, in sun and shade
 * alike since brightness cancels.
 */
final class Greenness {
    private static final double LOW = -0.5;
    private static final double HIGH = 1;
    private static final int BINS = 300;

    private static final double SURELY_SOIL = 0.03;
    private static final double SURELY_TURF = 0.11;
    private static final double LEAST_LEVEL = 0.04;
    private static final double MOST_LEVEL = 0.18;
    private static final double FEW = 0.005;

    private final GrayU8 red;
    private final GrayU8 green;
    private final GrayU8 blue;

    Greenness(Picture picture) {
        red = smooth(picture.red());
        green = smooth(picture.green());
        blue = smooth(picture.blue());
    }

    private static GrayU8 smooth(GrayU8 band) {
        return BlurImageOps.gaussian(band, null, 0.8, 2, null);
    }

    double at(int x, int y) {
        int at = y * red.width + x;
        int r = red.data[at] & 0xFF;
        int g = green.data[at] & 0xFF;
        int b = blue.data[at] & 0xFF;
        return (2.0 * g - r - b) / Math.max(1, r + g + b);
    }

    int brightness(int x, int y) {
        int at = y * red.width + x;
        return ((red.data[at] & 0xFF) + (green.data[at] & 0xFF) + (blue.data[at] & 0xFF)) / 3;
    }

    static void count(int[] histogram, double value) {
        histogram[bin(value)]++;
    }

    private static int bin(double value) {
        return Math.max(0, Math.min(BINS - 1, (int) ((value - LOW) / (HIGH - LOW) * BINS)));
    }

    static int[] histogram() {
        return new int[BINS];
    }

    /**
     * What parts soil from turf: halfway between the median of what is surely soil and that of what is surely turf, so
     * that a blurred border between them stays where it is. Where there is no soil to speak of it is taken for gray.
     */
    static double level(int[] histogram) {
        double soil = median(histogram, 0, bin(SURELY_SOIL), 0);
        double turf = median(histogram, bin(SURELY_TURF), BINS, MOST_LEVEL * 2);
        return Math.max(LEAST_LEVEL, Math.min(MOST_LEVEL, (soil + turf) / 2));
    }

    private static double median(int[] histogram, int from, int to, double otherwise) {
        long all = 0;
        for (int count : histogram) {
            all += count;
        }
        long there = 0;
        for (int i = from; i < to; i++) {
            there += histogram[i];
        }
        if (there <= FEW * all) {
            return otherwise;
        }
        long left = there / 2;
        int bin = from;
        while (left > histogram[bin]) {
            left -= histogram[bin++];
        }
        return LOW + (bin + 0.5) * (HIGH - LOW) / BINS;
    }
}
