package footing.io.photo;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;

/** Headers that say other things than the picture behind them. */
final class BadHeaders {
    private static final String[] STARTS = {
        "",
        "GIF89a",
        "BM",
        "%PDF-1.7\n",
        "PK\u0003\u0004",
        "RIFF....WEBPVP8 ",
        "....ftypheic",
        "II*\0",
        "kind: pull\n",
        "\u00ff\u00d8\u00ff\u00e0",
        "\u0089PNG\r\n\u001a\n"
    };

    private BadHeaders() {}

    /** Another size in the header of a PNG, with its sum set right, or in the frame of a JPEG. */
    static void resized(byte[] file, int width, int height) {
        if (file[0] == (byte) 0x89) {
            put(file, 16, width, 4);
            put(file, 20, height, 4);
            CRC32 sum = new CRC32();
            sum.update(file, 12, 17);
            put(file, 29, (int) sum.getValue(), 4);
            return;
        }
        for (int i = 2; i < file.length - 9; i++) {
            if (file[i] == (byte) 0xFF && file[i + 1] == (byte) 0xC0) {
                put(file, i + 5, height, 2);
                put(file, i + 7, width, 2);
                return;
            }
        }
    }

    /** Another turn in the note of a camera, where there is one: 1 to 8 have a meaning. */
    static void turned(byte[] file, int note) {
        for (int i = 2; i < file.length - 10; i++) {
            if (file[i] == 0x01 && file[i + 1] == 0x12 && file[i + 2] == 0 && file[i + 3] == 3) {
                file[i + 9] = (byte) note;
                return;
            }
        }
    }

    /** The start of another kind of file, then noise or a picture's bytes. */
    static byte[] foreign(byte[] file, Random random) {
        byte[] start = STARTS[random.nextInt(STARTS.length)].getBytes(StandardCharsets.ISO_8859_1);
        byte[] bytes = new byte[start.length + random.nextInt(2000)];
        if (random.nextBoolean()) {
            random.nextBytes(bytes);
        } else {
            System.arraycopy(file, 0, bytes, 0, Math.min(file.length, bytes.length));
        }
        System.arraycopy(start, 0, bytes, 0, start.length);
        return bytes;
    }

    /** Bytes this thread has taken so far. */
    static long allocated() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        return threads.getCurrentThreadAllocatedBytes();
    }

    private static void put(byte[] file, int at, int value, int bytes) {
        for (int i = 0; i < bytes; i++) {
            file[at + i] = (byte) (value >> (8 * (bytes - 1 - i)));
        }
    }
}
