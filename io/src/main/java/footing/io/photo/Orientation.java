package footing.io.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** How a camera held on its side marks its picture. Source: EXIF 2.3, tag 0x0112; values 1 to 8. */
final class Orientation {
    private static final int UPRIGHT = 1;
    private static final int TAG = 0x0112;
    private static final int APP1 = 0xE1;
    private static final int SCAN = 0xDA;
    private static final int ENTRY = 12;

    private Orientation() {}

    /** The mark in a JPEG file's bytes; 1 (upright) if there is none that can be read. */
    static int of(byte[] file) {
        try {
            return inSegments(ByteBuffer.wrap(file));
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            return UPRIGHT;
        }
    }

    private static int inSegments(ByteBuffer in) {
        if ((in.getShort(0) & 0xFFFF) != 0xFFD8) {
            return UPRIGHT;
        }
        int at = 2;
        while (at + 4 < in.capacity() && (in.get(at) & 0xFF) == 0xFF) {
            int marker = in.get(at + 1) & 0xFF;
            int length = in.getShort(at + 2) & 0xFFFF;
            if (marker == SCAN) {
                return UPRIGHT;
            }
            if (marker == APP1 && text(in, at + 4).equals("Exif")) {
                return inTiff(in.slice(at + 10, length - 8));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static int inTiff(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + i * ENTRY;
            if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
                int value = tiff.getShort(entry + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    private static String text(ByteBuffer in, int at) {
        byte[] bytes = new byte[4];
        in.get(at, bytes);
        return new String(bytes, StandardCharsets.US_ASCII);
    }
}
