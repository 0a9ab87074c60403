package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.drawing.SvgDrawer;
import footing.io.paper.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A proposal, printed and read back. */
final class Printed {
    private static final SvgDrawer DRAWER = new SvgDrawer();

    private final Answer answer;
    private final byte[] pdf;

    private Printed(Answer answer, byte[] pdf) {
        this.answer = answer;
        this.pdf = pdf;
    }

    Answer answer() {
        return answer;
    }

    byte[] bytes() {
        return pdf.clone();
    }

    static String example(String name) {
        try {
            return Files.readString(Path.of("../cases", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Answer answer(String text, int futures, boolean quick) {
        Case stated = CaseFile.read(text, "case")
                .found()
                .orElseThrow(() -> new AssertionError(
                        CaseFile.read(text, "case").problems().toString()));
        Options options = Options.usual().withFutures(futures);
        return Assessment.answer(stated, quick ? options.quickly() : options, Workers.one(), Watch.NOBODY);
    }

    static Printed of(Answer answer, Paper paper) {
        ByteArrayOutputStream to = new ByteArrayOutputStream();
        try {
            if (!Proposal.write(answer, paper, DRAWER, Watch.NOBODY, to)) {
                throw new AssertionError("stopped by nobody");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Printed(answer, to.toByteArray());
    }

    PDDocument open() throws IOException {
        return Loader.loadPDF(pdf);
    }

    /** The text of some pages, blanks of any kind made one. */
    String text(int from, int to) throws IOException {
        try (PDDocument document = open()) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(from);
            stripper.setEndPage(to);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    String text() throws IOException {
        return text(1, Integer.MAX_VALUE);
    }
}
