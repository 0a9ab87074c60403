package footing.io.photo;

import boofcv.struct.image.GrayU8;

/**
 * The ground seen from straight above.
 *
 * @param x of the first pixel's middle, in m from the card's first corner
 * @param y of it
 * @param pixel side of a pixel in m
 * @param tone what is seen
 * @param usable 1 where ground may be judged
 */
record Canvas(double x, double y, double pixel, Tone tone, GrayU8 usable) {
    /** A rectangle of the ground: left, top, right, bottom in m. */
    record Part(double left, double top, double right, double bottom) {}

    static Canvas of(Plane plane, Tone tone, Part part, double pixel) {
        int width = Math.max(8, (int) ((part.right - part.left) / pixel));
        int height = Math.max(8, (int) ((part.bottom - part.top) / pixel));
        GrayU8 shade = new GrayU8(width, height);
        GrayU8 usable = new GrayU8(width, height);
        double x = part.left + pixel / 2;
        double y = part.top + pixel / 2;
        for (int j = 0; j < height; j++) {
            for (int i = 0; i < width; i++) {
                Spot seen = plane.seen(x + i * pixel, y + j * pixel);
                boolean covered = tone.covers(seen.x(), seen.y());
                usable.data[j * width + i] = (byte) (covered ? 1 : 0);
                shade.data[j * width + i] = covered ? (byte) Math.round(tone.at(seen.x(), seen.y())) : 0;
            }
        }
        return new Canvas(x, y, pixel, new Tone(shade, tone.inverted()), usable);
    }

    /** The same at a fraction of the pixels. */
    Canvas reduced(int factor) {
        double shift = pixel * (factor - 1) / 2;
        GrayU8 all = new GrayU8(usable.width, usable.height);
        for (int i = 0; i < all.data.length; i++) {
            all.data[i] = (byte) (255 * usable.data[i]);
        }
        GrayU8 part = Tone.reduced(all, factor);
        for (int i = 0; i < part.data.length; i++) {
            part.data[i] = (byte) ((part.data[i] & 0xFF) == 255 ? 1 : 0);
        }
        Tone small = new Tone(Tone.reduced(tone.pixels(), factor), tone.inverted());
        return new Canvas(x + shift, y + shift, pixel * factor, small, part);
    }

    int width() {
        return usable.width;
    }

    int height() {
        return usable.height;
    }

    /** Leaves a rectangle of the ground out. */
    void exclude(Part part) {
        for (int j = 0; j < height(); j++) {
            for (int i = 0; i < width(); i++) {
                double u = x + i * pixel;
                double v = y + j * pixel;
                if (u >= part.left && u <= part.right && v >= part.top && v <= part.bottom) {
                    usable.data[j * width() + i] = 0;
                }
            }
        }
    }
}
