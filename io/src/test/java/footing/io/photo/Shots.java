package footing.io.photo;

import footing.core.quantity.Length;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Drawn photos of prints whose measures are known. */
final class Shots {
    private static final double[][] SHEETS = {{0.2794, 0.2159}, {0.4318, 0.2794}, {0.297, 0.210}, {0.420, 0.297}};
    private static final double[][] FLOORS = {
        {0.30, 0.29, 0.27}, {0.08, 0.08, 0.085}, {0.10, 0.18, 0.05}, {0.22, 0.14, 0.08}, {0.42, 0.40, 0.37}
    };
    private static final double[][] INKS = {
        {0.04, 0.04, 0.045}, {0.10, 0.09, 0.09}, {0.35, 0.05, 0.05}, {0.04, 0.07, 0.30}
    };

    private Shots() {}

    /** A photo and what is on it. */
    record Shot(BufferedImage image, Card card, DrawnPrint print, DrawnCamera camera) {
        /** The same once more, after something of it was changed. */
        Shot again() {
            return new Shot(camera.take(print), card, print, camera);
        }
    }

    /** A letter sheet on a gray floor with a print 120 mm long and 180 mm wide, tilted by some degrees. */
    static Shot plain(double tilt) {
        Random random = new Random(3);
        double[] sheet = SHEETS[0];
        double[] middle = {sheet[0] / 2, sheet[1] / 2, 0, 0.06, 0.09};
        DrawnPrint drawn = new DrawnPrint(random, sheet, middle, 3);
        double[] angles = {tilt, 40, 8};
        DrawnCamera camera = new DrawnCamera(900, 700, random, new double[] {sheet[0] / 2, sheet[1] / 2}, 0.6, angles);
        Card card = new Card(new Length(sheet[0]), new Length(sheet[1]), Card.Place.UNDER);
        return new Shot(camera.take(drawn), card, drawn, camera);
    }

    static List<Spot> corners(Shot shot) {
        double[] card = shot.print().card;
        DrawnCamera camera = shot.camera();
        return List.of(
                camera.seen(0, 0), camera.seen(card[0], 0), camera.seen(card[0], card[1]), camera.seen(0, card[1]));
    }

    /** As a camera held otherwise stores it: turned, with a note how to turn it back. */
    static byte[] stored(BufferedImage upright, Orientation orientation) {
        boolean swaps = orientation.swaps();
        int w = swaps ? upright.getHeight() : upright.getWidth();
        int h = swaps ? upright.getWidth() : upright.getHeight();
        BufferedImage turned = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int at = orientation.index(x, y, w, h);
                turned.setRGB(x, y, upright.getRGB(at % upright.getWidth(), at / upright.getWidth()));
            }
        }
        byte[] jpeg = jpeg(turned, 0.95f);
        byte[] note = {
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            0x01,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation.note(),
            0,
            0,
            0,
            0,
            0,
            0
        };
        byte[] file = new byte[jpeg.length + note.length];
        System.arraycopy(jpeg, 0, file, 0, 2);
        System.arraycopy(note, 0, file, 2, note.length);
        System.arraycopy(jpeg, 2, file, 2 + note.length, jpeg.length - 2);
        return file;
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A print on a sheet, tilted by up to 35°, noisy, half of them with a shadow across. */
    static Shot onSheet(Random random) {
        double[] sheet = SHEETS[random.nextInt(SHEETS.length)];
        double[] half = {sheet[1] * between(random, 0.22, 0.36), sheet[0] * between(random, 0.20, 0.36)};
        double[] print = {
            sheet[0] / 2 + between(random, -0.05, 0.05) * sheet[0],
            sheet[1] / 2 + between(random, -0.05, 0.05) * sheet[1],
            Math.toRadians(between(random, -8, 8)),
            half[0],
            half[1]
        };
        DrawnPrint drawn = new DrawnPrint(random, sheet, print, between(random, 2, 6));
        drawn.floor = FLOORS[random.nextInt(FLOORS.length)];
        drawn.ink = INKS[random.nextInt(INKS.length)];
        // Ribs of some 30 mm, one of them at each end, as treads have them.
        drawn.period = 2 * half[1] / (2 * Math.round(half[1] / 0.03) + 1);
        drawn.groove = random.nextInt(3) == 0 ? between(random, 0.003, 0.008) : 0;
        DrawnCamera camera = camera(random, sheet, between(random, 1.05, 1.5));
        if (random.nextBoolean()) {
            shade(random, camera, sheet);
        }
        Card card = new Card(new Length(sheet[0]), new Length(sheet[1]), Card.Place.UNDER);
        return new Shot(camera.take(drawn), card, drawn, camera);
    }

    /** A chalk print on a dark floor beside a white card, or an inked one on a light floor. */
    static Shot besideCard(Random random) {
        double[] card = {0.2794, 0.2159};
        double[] print = {
            card[0] + between(random, 0.14, 0.18),
            card[1] / 2 + between(random, -0.05, 0.05),
            Math.toRadians(between(random, -8, 8)),
            between(random, 0.05, 0.08),
            between(random, 0.07, 0.10)
        };
        DrawnPrint drawn = new DrawnPrint(random, card, print, between(random, 2, 6));
        boolean chalk = random.nextBoolean();
        drawn.floor = chalk ? FLOORS[1] : FLOORS[4];
        drawn.ink = chalk ? new double[] {0.55, 0.55, 0.52} : INKS[0];
        double[] both = {1.8 * card[0], card[1]};
        DrawnCamera camera = camera(random, both, between(random, 1.0, 1.3));
        return new Shot(
                camera.take(drawn),
                new Card(new Length(card[0]), new Length(card[1]), Card.Place.BESIDE),
                drawn,
                camera);
    }

    private static DrawnCamera camera(Random random, double[] sheet, double room) {
        double[] target = {sheet[0] / 2 + between(random, -0.01, 0.01), sheet[1] / 2 + between(random, -0.01, 0.01)};
        double tilt = between(random, 0, 35);
        double[] angles = {tilt, between(random, 0, 360), 90 * random.nextInt(4) + between(random, -20, 20)};
        DrawnCamera camera =
                new DrawnCamera(800, 600, random, target, room * 1.35 * Math.hypot(sheet[0], sheet[1]), angles);
        camera.bend = between(random, -0.03, 0.03);
        camera.noise = between(random, 1, 7);
        camera.soft = between(random, 0.5, 1.2);
        return camera;
    }

    private static void shade(Random random, DrawnCamera camera, double[] sheet) {
        double angle = between(random, 0, 2 * Math.PI);
        double nx = Math.cos(angle);
        double ny = Math.sin(angle);
        double through = nx * between(random, 0.2, 0.8) * sheet[0] + ny * between(random, 0.2, 0.8) * sheet[1];
        camera.shadow = new double[] {nx, ny, through, between(random, 0.4, 0.8)};
        camera.penumbra = between(random, 0.002, 0.02);
    }

    static byte[] jpeg(BufferedImage image, float quality) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(quality);
        try (var to = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
