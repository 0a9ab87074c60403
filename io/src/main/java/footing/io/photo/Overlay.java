package footing.io.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** The photograph with what was found drawn over it. */
final class Overlay {
    private static final Color SHEET = new Color(0xE0, 0x20, 0x20);
    private static final Color PRINT = new Color(0x20, 0x60, 0xFF);

    private Overlay() {}

    /** The sheet's corners and the print's hull. */
    static BufferedImage of(BufferedImage picture, Plane plane, List<Spot> corners, List<Spot> hull, double scale) {
        BufferedImage over = copy(picture);
        Graphics2D g = over.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setStroke(new BasicStroke(Math.max(1.5f, picture.getWidth() / 600f)));
        g.setColor(SHEET);
        g.draw(round(corners));
        g.setColor(PRINT);
        g.draw(round(hull.stream()
                .map(s -> plane.inPicture(s.x() / scale, s.y() / scale))
                .toList()));
        g.dispose();
        return over;
    }

    static BufferedImage copy(BufferedImage picture) {
        BufferedImage copy = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = copy.createGraphics();
        g.drawImage(picture, 0, 0, null);
        g.dispose();
        return copy;
    }

    private static Path2D round(List<Spot> spots) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < spots.size(); i++) {
            Spot s = spots.get(i);
            if (i == 0) {
                path.moveTo(s.x() + 0.5, s.y() + 0.5);
            } else {
                path.lineTo(s.x() + 0.5, s.y() + 0.5);
            }
        }
        path.closePath();
        return path;
    }
}
