package footing.io.paper;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Gives a typeface of our own to the printing library for whatever font it asks for by name, even where it then writes
 * nothing in it. Without this it would search the whole machine for fonts and leave a list of them in the user's home.
 */
final class OwnFonts implements FontMapper {
    private final TrueTypeFont face = Typefaces.Sans.FACE;

    private OwnFonts() {}

    static void use() {
        FontMappers.set(new OwnFonts());
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo info) {
        return new CIDFontMapping(null, face, false);
    }
}
