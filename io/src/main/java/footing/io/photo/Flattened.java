package footing.io.photo;

import java.awt.image.BufferedImage;

/**
 * A sheet seen straight from above.
 *
 * @param scale pixels of it a meter
 */
record Flattened(BufferedImage image, double scale) {
    private static final int LONG_SIDE = 1100;

    /** Takes each pixel from between the four of the picture around it. */
    static Flattened of(BufferedImage picture, Plane plane, Sheet sheet) {
        double scale = LONG_SIDE / Math.max(sheet.width(), sheet.length());
        int w = (int) Math.max(1, Math.round(sheet.width() * scale));
        int h = (int) Math.max(1, Math.round(sheet.length() * scale));
        BufferedImage flat = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                Spot at = plane.inPicture((x + 0.5) / scale, (y + 0.5) / scale);
                flat.setRGB(x, y, between(picture, at.x(), at.y()));
            }
        }
        return new Flattened(flat, scale);
    }

    private static int between(BufferedImage picture, double x, double y) {
        double fx = Math.max(0, Math.min(picture.getWidth() - 1.001, x));
        double fy = Math.max(0, Math.min(picture.getHeight() - 1.001, y));
        int x0 = (int) fx;
        int y0 = (int) fy;
        int x1 = Math.min(x0 + 1, picture.getWidth() - 1);
        int y1 = Math.min(y0 + 1, picture.getHeight() - 1);
        double s = fx - x0;
        double t = fy - y0;
        int[] four = {picture.getRGB(x0, y0), picture.getRGB(x1, y0), picture.getRGB(x0, y1), picture.getRGB(x1, y1)};
        double[] weights = {(1 - s) * (1 - t), s * (1 - t), (1 - s) * t, s * t};
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            double sum = 0;
            for (int i = 0; i < 4; i++) {
                sum += weights[i] * (four[i] >> shift & 255);
            }
            mixed |= (int) Math.round(sum) << shift;
        }
        return mixed;
    }

    /** Brightness of each pixel, row by row, from 0 to 1. */
    double[] brightness() {
        int w = image.getWidth();
        double[] bright = new double[w * image.getHeight()];
        int[] rgb = image.getRGB(0, 0, w, image.getHeight(), null, 0, w);
        for (int i = 0; i < rgb.length; i++) {
            int c = rgb[i];
            bright[i] = (0.299 * (c >> 16 & 255) + 0.587 * (c >> 8 & 255) + 0.114 * (c & 255)) / 255;
        }
        return bright;
    }
}
