package footing.io.photo;

import boofcv.struct.image.GrayU8;

/**
 * A picture upright, its colors apart. Large ones are thinned out when they are opened.
 *
 * @param thinned every how many pixels of the file one was kept, across and down
 */
record Picture(GrayU8 red, GrayU8 green, GrayU8 blue, int thinned) {
    int width() {
        return red.width;
    }

    int height() {
        return red.height;
    }

    /** From the file's pixels to this picture's. */
    Spot inner(Spot spot) {
        return spot.times(1.0 / thinned);
    }

    /** From this picture's pixels to the file's. */
    Spot outer(Spot spot) {
        return spot.times(thinned);
    }

    /** The least of the three colors, in which white paper stands out from anything colored, and ink from paper. */
    GrayU8 least() {
        GrayU8 least = new GrayU8(width(), height());
        for (int i = 0; i < least.data.length; i++) {
            least.data[i] = (byte) Math.min(red.data[i] & 0xFF, Math.min(green.data[i] & 0xFF, blue.data[i] & 0xFF));
        }
        return least;
    }

    /** How far the greatest of the three colors is from full, in which what is dark stands out. */
    GrayU8 dark() {
        GrayU8 dark = new GrayU8(width(), height());
        for (int i = 0; i < dark.data.length; i++) {
            int most = Math.max(red.data[i] & 0xFF, Math.max(green.data[i] & 0xFF, blue.data[i] & 0xFF));
            dark.data[i] = (byte) (0xFF - most);
        }
        return dark;
    }
}
