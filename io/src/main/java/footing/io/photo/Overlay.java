package footing.io.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;

/** The picture, at most {@value #LONGEST} pixels long, with what was found drawn over it. */
public final class Overlay {
    private static final int LONGEST = 1400;
    private static final Color CARD = new Color(0x00, 0x9E, 0xE3);
    private static final Color BORDER = new Color(0xFF, 0x2D, 0x87);

    private final BufferedImage image;
    private final double scale;

    private Overlay(BufferedImage image, double scale) {
        this.image = image;
        this.scale = scale;
    }

    static {
        System.setProperty("java.awt.headless", "true");
    }

    static Overlay of(Picture picture) {
        int step = Math.max(1, (int) Math.ceil(Math.max(picture.width(), picture.height()) / (double) LONGEST));
        BufferedImage image =
                new BufferedImage(picture.width() / step, picture.height() / step, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int at = y * step * picture.width() + x * step;
                int rgb = (picture.red().data[at] & 0xFF) << 16
                        | (picture.green().data[at] & 0xFF) << 8
                        | (picture.blue().data[at] & 0xFF);
                image.setRGB(x, y, rgb);
            }
        }
        return new Overlay(image, 1.0 / step);
    }

    void card(List<Spot> corners) {
        draw(corners, CARD);
    }

    void border(List<Spot> border) {
        draw(border, BORDER);
    }

    private void draw(List<Spot> closed, Color color) {
        if (closed.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(closed.get(0).x() * scale, closed.get(0).y() * scale);
        closed.subList(1, closed.size()).forEach(s -> path.lineTo(s.x() * scale, s.y() * scale));
        path.closePath();
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        // A dark line under the bright one shows on any ground.
        pen.setStroke(new BasicStroke(4.5f));
        pen.setColor(Color.BLACK);
        pen.draw(path);
        pen.setStroke(new BasicStroke(2f));
        pen.setColor(color);
        pen.draw(path);
        pen.dispose();
    }

    /** Tints pixels; {@code kind} says of a place in the picture 0 for none, 1 for bare. */
    void tint(IntBinaryOperator kind) {
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (kind.applyAsInt((int) (x / scale), (int) (y / scale)) == 1) {
                    image.setRGB(x, y, tinted(image.getRGB(x, y)));
                }
            }
        }
    }

    private static int tinted(int rgb) {
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int own = rgb >> shift & 0xFF;
            int tint = BORDER.getRGB() >> shift & 0xFF;
            mixed |= ((2 * own + 3 * tint) / 5) << shift;
        }
        return mixed;
    }

    /** As a PNG file. */
    public byte[] png() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
