package footing.io.photo;

import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Opens a JPEG or PNG picture. Its size is read from its header first, so that an enormous one is refused before it is
 * decoded, and a large one is thinned out while it is decoded: what is kept has {@value #KEPT} pixels at the most.
 */
final class PictureFile {
    /** Larger files are refused unread. */
    static final int MOST_BYTES = 60_000_000;

    static final int MOST_PIXELS = 60_000_000;
    private static final int MOST_SIDE = 30_000;
    private static final int LEAST_SIDE = 100;
    private static final int KEPT = 3_300_000;
    private static final String RETAKE = "copy it again from the phone, or take it anew";

    private PictureFile() {}

    static Decoded decode(byte[] file) {
        if (file.length > MOST_BYTES) {
            return new Decoded.Unreadable("the file is larger than 60 MB", "take it with 12 to 50 megapixels");
        }
        String format = format(file);
        if (format.isEmpty()) {
            return foreign(file);
        }
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        boolean[] damaged = {false};
        reader.addIIOReadWarningListener((from, warning) -> damaged[0] |= isDamage(warning));
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            Decoded decoded = decode(reader, Orientation.of(file));
            return damaged[0] ? new Decoded.Unreadable("the picture is damaged or cut off", RETAKE) : decoded;
        } catch (IOException | RuntimeException e) {
            // Broken files make the decoders fail in many ways; all mean the same to whoever took the picture.
            return new Decoded.Unreadable("the picture is damaged or of an uncommon kind", RETAKE);
        } finally {
            reader.dispose();
        }
    }

    private static Decoded decode(ImageReader reader, Orientation orientation) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if (width < LEAST_SIDE || height < LEAST_SIDE) {
            return new Decoded.Unreadable(
                    "the picture has " + width + " by " + height + " pixels", "it takes at least 100 each way");
        }
        if (width > MOST_SIDE || height > MOST_SIDE || (long) width * height > MOST_PIXELS) {
            return new Decoded.Unreadable(
                    "the picture has " + width + " by " + height + " pixels", "take it with 60 megapixels at the most");
        }
        int thinned = (int) Math.ceil(Math.sqrt((double) width * height / KEPT));
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(thinned, thinned, 0, 0);
        return new Decoded.Opened(upright(reader.read(0, param), orientation, thinned));
    }

    private static Picture upright(BufferedImage image, Orientation orientation, int thinned) {
        int w = image.getWidth();
        int h = image.getHeight();
        int width = orientation.swaps() ? h : w;
        int height = orientation.swaps() ? w : h;
        GrayU8 red = new GrayU8(width, height);
        GrayU8 green = new GrayU8(width, height);
        GrayU8 blue = new GrayU8(width, height);
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                int at = orientation.index(x, y, w, h);
                red.data[at] = (byte) (row[x] >> 16);
                green.data[at] = (byte) (row[x] >> 8);
                blue.data[at] = (byte) row[x];
            }
        }
        return new Picture(red, green, blue, thinned);
    }

    /** Stray bytes between the parts of a file are common and harm nothing. */
    private static boolean isDamage(String warning) {
        String lower = warning.toLowerCase(Locale.ROOT);
        return (lower.contains("premature") || lower.contains("corrupt")) && !lower.contains("extraneous");
    }

    private static String format(byte[] file) {
        if (starts(file, 0, 0xFF, 0xD8, 0xFF)) {
            return "jpeg";
        }
        return starts(file, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A) ? "png" : "";
    }

    private static Decoded foreign(byte[] file) {
        boolean boxed = starts(file, 4, 'f', 't', 'y', 'p') && file.length >= 12;
        String brand = boxed ? new String(file, 8, 4, StandardCharsets.ISO_8859_1) : "";
        if (brand.startsWith("hei") || brand.startsWith("hev") || brand.startsWith("mif") || brand.startsWith("avif")) {
            return new Decoded.Unreadable(
                    "pictures of the kind HEIC or AVIF can't be opened",
                    "set the phone's camera to JPEG ('most compatible'), or save the picture as JPEG");
        }
        return new Decoded.Unreadable("that is no picture of the kinds JPEG and PNG", "save it as JPEG");
    }

    private static boolean starts(byte[] file, int at, int... with) {
        if (file.length < at + with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((file[at + i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }
}
