package footing.io.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.EnumSet;
import java.util.Set;

/** Makes a PDF of XHTML: tagged after PDF/UA, every font embedded, nothing fetched from anywhere. */
public final class Press {
    private static final Set<FSFontUseCase> IN_TEXT = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.FALLBACK_PRE);
    private static final Set<FSFontUseCase> IN_FIGURES = EnumSet.of(FSFontUseCase.SVG);

    static {
        XRLog.setLoggingEnabled(false);
        System.setProperty("java.awt.headless", "true");
        OwnFonts.use();
    }

    private Press() {}

    /**
     * Prints a document.
     *
     * @param xhtml with a language, a title and a description
     * @throws IOException if the PDF can't be written
     */
    public static void print(String xhtml, Paper paper, OutputStream to) throws IOException {
        // The library takes what figures are set in from files alone.
        Path face = Files.createTempFile("footing", ".ttf");
        try (BatikSVGDrawer figures = new BatikSVGDrawer();
                InputStream in = Typefaces.file("LiberationSans-Regular")) {
            Files.copy(in, face, StandardCopyOption.REPLACE_EXISTING);
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.usePdfUaAccessibility(true);
            builder.useDefaultPageSize((float) paper.width(), (float) paper.height(), PageSizeUnits.MM);
            builder.useUriResolver((base, uri) -> null);
            builder.useSVGDrawer(figures);
            builder.withProducer("Footing");
            faces(builder, "LiberationSerif", Typefaces.SERIF);
            faces(builder, "LiberationSans", Typefaces.SANS);
            builder.useFont(face.toFile(), Typefaces.SANS, 400, FontStyle.NORMAL, true, IN_FIGURES);
            builder.withHtmlContent(xhtml, null);
            builder.toStream(to);
            builder.run();
        } finally {
            Files.deleteIfExists(face);
        }
    }

    private static void faces(PdfRendererBuilder builder, String file, String family) {
        face(builder, file + "-Regular", family, 400, FontStyle.NORMAL);
        face(builder, file + "-Bold", family, 700, FontStyle.NORMAL);
        face(builder, file + "-Italic", family, 400, FontStyle.ITALIC);
    }

    private static void face(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        builder.useFont(() -> Typefaces.file(file), family, weight, style, true, IN_TEXT);
    }
}
