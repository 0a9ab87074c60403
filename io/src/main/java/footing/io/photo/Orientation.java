package footing.io.photo;

import java.util.Arrays;

/**
 * How a picture has to be turned or mirrored to be looked at upright, as the camera noted it.
 *
 * <p>Source: the tag 0x0112 of Exif 2.3 (JEITA CP-3451C) in the first directory of the TIFF block of a JPEG's first
 * application segment; its values 1 to 8 (from memory).
 */
enum Orientation {
    UPRIGHT(1, false),
    MIRRORED(2, false),
    HALF_TURN(3, false),
    FLIPPED(4, false),
    TRANSPOSED(5, true),
    QUARTER_TURN_RIGHT(6, true),
    TRANSVERSE(7, true),
    QUARTER_TURN_LEFT(8, true);

    private static final int TAG = 0x0112;
    private static final int SHORT = 3;
    private static final int MOST_ENTRIES = 500;

    /** As the tag has it. */
    private final int note;

    private final boolean swaps;

    Orientation(int note, boolean swaps) {
        this.note = note;
        this.swaps = swaps;
    }

    int note() {
        return note;
    }

    /** True if width and height change places. */
    boolean swaps() {
        return swaps;
    }

    /** Where the pixel at x, y of a stored picture of w by h goes in the upright one, row by row. */
    int index(int x, int y, int w, int h) {
        return switch (this) {
            case UPRIGHT -> y * w + x;
            case MIRRORED -> y * w + (w - 1 - x);
            case HALF_TURN -> (h - 1 - y) * w + (w - 1 - x);
            case FLIPPED -> (h - 1 - y) * w + x;
            case TRANSPOSED -> x * h + y;
            case QUARTER_TURN_RIGHT -> x * h + (h - 1 - y);
            case TRANSVERSE -> (w - 1 - x) * h + (h - 1 - y);
            case QUARTER_TURN_LEFT -> (w - 1 - x) * h + y;
        };
    }

    /** What the file says; upright if it says nothing that can be read. */
    static Orientation of(byte[] file) {
        int at = 2;
        while (at + 4 <= file.length && (file[at] & 0xFF) == 0xFF) {
            int marker = file[at + 1] & 0xFF;
            int length = big(file, at + 2);
            if (marker == 0xDA || length < 2) {
                return UPRIGHT;
            }
            if (marker == 0xE1 && at + 10 <= file.length && file[at + 4] == 'E' && file[at + 5] == 'x') {
                return inBlock(file, at + 10, Math.min(file.length, at + 2 + length));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static Orientation inBlock(byte[] file, int start, int end) {
        if (start + 8 > end) {
            return UPRIGHT;
        }
        boolean little = file[start] == 'I';
        int directory = start + two(file, start + 4 + (little ? 0 : 2), little);
        if (directory + 2 > end) {
            return UPRIGHT;
        }
        int entries = Math.min(MOST_ENTRIES, two(file, directory, little));
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if (entry + 12 > end) {
                return UPRIGHT;
            }
            if (two(file, entry, little) == TAG && two(file, entry + 2, little) == SHORT) {
                int value = two(file, entry + 8, little);
                return Arrays.stream(values())
                        .filter(o -> o.note == value)
                        .findFirst()
                        .orElse(UPRIGHT);
            }
        }
        return UPRIGHT;
    }

    private static int two(byte[] file, int at, boolean little) {
        return little ? (file[at] & 0xFF) | (file[at + 1] & 0xFF) << 8 : big(file, at);
    }

    private static int big(byte[] file, int at) {
        return (file[at] & 0xFF) << 8 | (file[at + 1] & 0xFF);
    }
}
