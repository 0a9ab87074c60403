package footing.io.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A photograph as it was meant to be seen, thinned to at most about {@value #ENOUGH} pixels a side.
 *
 * @param thinned every how many-th pixel of the file was taken
 */
record Photo(BufferedImage image, int thinned) {
    static final int ENOUGH = 2200;

    private static final long MOST_BYTES = 60_000_000;
    private static final long MOST_PIXELS = 120_000_000;

    /**
     * Reads a JPEG or PNG file.
     *
     * @throws PhotoTrouble if it is none that can be used
     * @throws IOException if it can't be opened or read
     */
    static Photo read(Path file) throws IOException, PhotoTrouble {
        if (Files.size(file) > MOST_BYTES) {
            throw new PhotoTrouble("larger than " + MOST_BYTES / 1_000_000 + " MB", "save it smaller");
        }
        byte[] bytes = Files.readAllBytes(file);
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new PhotoTrouble("not a picture that can be read", "JPEG and PNG would be");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return thinned(reader, Orientation.of(bytes));
            } catch (IndexOutOfBoundsException | IllegalArgumentException | javax.imageio.IIOException e) {
                throw new PhotoTrouble("damaged", "take it from the camera again");
            } finally {
                reader.dispose();
            }
        }
    }

    private static Photo thinned(ImageReader reader, int orientation) throws IOException, PhotoTrouble {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new PhotoTrouble("more than " + MOST_PIXELS / 1_000_000 + " megapixels", "save it smaller");
        }
        int period = Math.max(1, (Math.max(width, height) + ENOUGH - 1) / ENOUGH);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(period, period, period / 2, period / 2);
        return new Photo(upright(reader.read(0, param), orientation), period);
    }

    /** The picture turned and mirrored as its mark says. */
    static BufferedImage upright(BufferedImage from, int orientation) {
        int w = from.getWidth();
        int h = from.getHeight();
        boolean swapped = orientation >= 5;
        BufferedImage to = new BufferedImage(swapped ? h : w, swapped ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < to.getHeight(); y++) {
            for (int x = 0; x < to.getWidth(); x++) {
                int u = swapped ? y : x;
                int v = swapped ? x : y;
                boolean mirrorU = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
                boolean mirrorV = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
                to.setRGB(x, y, from.getRGB(mirrorU ? w - 1 - u : u, mirrorV ? h - 1 - v : v));
            }
        }
        return to;
    }
}
