package footing.io.photo;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayU8;

/**
 * One shade of a picture between its pixels.
 *
 * @param inverted true if more of it is less light
 */
record Tone(GrayU8 pixels, boolean inverted) {
    private static final double GAMMA = 2.2;

    /** The least of the three colors, smoothed by a pixel so that noise counts less. */
    static Tone ofLeast(Picture picture) {
        return new Tone(BlurImageOps.gaussian(picture.least(), null, 1, 2, null), false);
    }

    /** The darkness, smoothed alike. */
    static Tone ofDark(Picture picture) {
        return new Tone(BlurImageOps.gaussian(picture.dark(), null, 1, 2, null), true);
    }

    /**
     * The light behind a shade, from 0 to 1, rising with the shade. A soft focus mixes light, so that a blurred edge lies
     * halfway between two lights, not two shades.
     */
    double light(double shade) {
        double share = shade / 255;
        return inverted ? 1 - Math.pow(1 - share, GAMMA) : Math.pow(share, GAMMA);
    }

    boolean covers(double x, double y) {
        return x >= 0 && y >= 0 && x <= pixels.width - 1 && y <= pixels.height - 1;
    }

    /** Straight between the four pixels around; the nearest edge beyond the picture. */
    double at(double x, double y) {
        double u = Math.max(0, Math.min(pixels.width - 1.001, x));
        double v = Math.max(0, Math.min(pixels.height - 1.001, y));
        int i = (int) u;
        int j = (int) v;
        int at = j * pixels.width + i;
        int below = at + pixels.width;
        double fx = u - i;
        double fy = v - j;
        double top = (pixels.data[at] & 0xFF) * (1 - fx) + (pixels.data[at + 1] & 0xFF) * fx;
        double bottom = (pixels.data[below] & 0xFF) * (1 - fx) + (pixels.data[below + 1] & 0xFF) * fx;
        return top * (1 - fy) + bottom * fy;
    }

    /** One pixel of each square of {@code factor}, their mean. */
    static GrayU8 reduced(GrayU8 pixels, int factor) {
        if (factor <= 1) {
            return pixels;
        }
        GrayU8 small = new GrayU8(pixels.width / factor, pixels.height / factor);
        for (int y = 0; y < small.height; y++) {
            for (int x = 0; x < small.width; x++) {
                int sum = 0;
                for (int j = 0; j < factor; j++) {
                    int row = (y * factor + j) * pixels.width + x * factor;
                    for (int i = 0; i < factor; i++) {
                        sum += pixels.data[row + i] & 0xFF;
                    }
                }
                small.data[y * small.width + x] = (byte) (sum / (factor * factor));
            }
        }
        return small;
    }
}
