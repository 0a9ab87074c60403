package footing.io.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The typefaces of our paper: Liberation Serif and Sans, with shapes for Latin, Greek and Cyrillic letters. Notes whether
 * a letter was asked for that they lack.
 */
public final class Typefaces {
    /** Stands in the place of a letter that has no shape. */
    public static final int MISSING = 0x25A1;

    static final String SERIF = "Liberation Serif";
    static final String SANS = "Liberation Sans";

    private boolean lacked;

    /** A letter as it can be printed. Marks that only steer a line of text are left out as spaces. */
    int shown(int letter) {
        if (Character.isISOControl(letter) || Character.getType(letter) == Character.FORMAT) {
            return ' ';
        }
        if (letter < 0x250 || (Known.CMAP.getGlyphId(letter) != 0 && !readsFromTheRight(letter))) {
            return letter;
        }
        lacked = true;
        return MISSING;
    }

    /** Has shapes, but no order of letters here. */
    private static boolean readsFromTheRight(int letter) {
        byte way = Character.getDirectionality(letter);
        return way == Character.DIRECTIONALITY_RIGHT_TO_LEFT || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    /** True if some letter had to be replaced. */
    public boolean lacked() {
        return lacked;
    }

    /** How wide a text is in the face of figures, in ems. */
    public static double width(String text) {
        double units = 0;
        for (int letter : text.codePoints().toArray()) {
            units += Sans.width(letter);
        }
        return units;
    }

    static InputStream file(String name) {
        InputStream in = Typefaces.class.getResourceAsStream("/liberation/" + name + ".ttf");
        if (in == null) {
            throw new IllegalStateException("the typeface " + name + " is missing from this build");
        }
        return in;
    }

    /** The letters of the text face; read once. */
    private static final class Known {
        static final CmapLookup CMAP = read();

        private static CmapLookup read() {
            try (TrueTypeFont font = parsed("LiberationSerif-Regular")) {
                return font.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The face of figures; read once and kept. */
    static final class Sans {
        static final TrueTypeFont FACE = parsed("LiberationSans-Regular");

        private Sans() {}

        static double width(int letter) {
            try {
                int glyph = FACE.getUnicodeCmapLookup().getGlyphId(letter);
                return (double) FACE.getAdvanceWidth(glyph) / FACE.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static TrueTypeFont parsed(String name) {
        try (InputStream in = file(name)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
