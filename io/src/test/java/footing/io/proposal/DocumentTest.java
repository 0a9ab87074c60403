package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.io.paper.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The document as a document: its size, its tags, its fonts, its margins. */
class DocumentTest {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    private static final float MARGIN = 21 * POINTS_PER_MM;

    private static Printed printed(Paper paper) {
        return Printed.of(Printed.answer(Printed.example("one-machine.yaml"), 300, false), paper);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void pages_ofEitherPaper_areOfItsSizeAndKeepTheirMargins(Paper paper) throws IOException {
        try (PDDocument document = printed(paper).open()) {
            for (PDPage page : document.getPages()) {
                PDRectangle box = page.getMediaBox();
                assertThat((double) box.getWidth()).isBetween(points(paper.width()) - 1, points(paper.width()) + 1);
                assertThat((double) box.getHeight()).isBetween(points(paper.height()) - 1, points(paper.height()) + 1);
            }
            Edges edges = new Edges();
            edges.getText(document);
            assertThat(edges.letters).isGreaterThan(2000);
            assertThat(edges.outside).isEmpty();
        }
    }

    private static double points(double millimeters) {
        return millimeters * POINTS_PER_MM;
    }

    /** Letters that stand beyond the left or right margin, or off the page. */
    private static final class Edges extends PDFTextStripper {
        private final List<String> outside = new ArrayList<>();
        private int letters;

        @Override
        protected void processTextPosition(TextPosition text) {
            letters++;
            float right = text.getXDirAdj() + text.getWidthDirAdj();
            boolean in = text.getXDirAdj() >= MARGIN - 12
                    && right <= text.getPageWidth() - MARGIN + 4
                    && text.getYDirAdj() > MARGIN / 2
                    && text.getYDirAdj() < text.getPageHeight() - MARGIN / 4;
            if (!in && !text.getUnicode().isBlank()) {
                outside.add(text.getUnicode() + " at " + text.getXDirAdj() + ", " + text.getYDirAdj());
            }
        }
    }

    @Test
    void document_structure_isTaggedTitledAndInALanguage() throws IOException {
        Printed printed = printed(Paper.LETTER);
        try (PDDocument document = printed.open()) {
            var catalog = document.getDocumentCatalog();
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getStructureTreeRoot()).isNotNull();
            assertThat(catalog.getStructureTreeRoot().getKids()).isNotEmpty();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo(printed.answer().of().heading().title());
        }
    }

    @Test
    void document_fonts_areAllEmbedded() throws IOException {
        try (PDDocument document = printed(Paper.LETTER).open()) {
            List<String> fonts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                collect(page.getResources(), fonts);
            }
            assertThat(fonts).isNotEmpty().allMatch(f -> f.contains("Liberation") && f.endsWith("embedded"));
        }
    }

    private static void collect(PDResources resources, List<String> fonts) throws IOException {
        if (resources == null) {
            return;
        }
        for (COSName name : resources.getFontNames()) {
            PDFont font = resources.getFont(name);
            fonts.add(font.getName() + (font.isEmbedded() ? " embedded" : " missing"));
        }
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form) {
                collect(form.getResources(), fonts);
            }
        }
    }
}
