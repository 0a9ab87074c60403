package footing.io.card;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.records.Background;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.casefile.CaseFile;
import footing.io.paper.Paper;
import footing.io.records.Records;
import footing.io.records.RecordsFile;
import footing.io.records.Sheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class VisorCardTest {
    private static byte[] pdf(Optional<Case> stated, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        VisorCard.write(stated, paper, out);
        return out.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static Optional<Case> example(String name) throws IOException {
        return CaseFile.read(Path.of("..", "cases", name)).found();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void write_forAnybody_fillsOnePageOfEitherPaper(Paper paper) throws IOException {
        byte[] card = pdf(Optional.empty(), paper);
        try (PDDocument document = Loader.loadPDF(card)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getHeight() * 25.4 / 72)
                    .isBetween(paper.height() - 1, paper.height() + 1);
        }
        assertThat(text(card)).contains("drive left", "operator's manual").contains(VisorCard.HEADINGS);
        assertThat(text(card).split("\\bflat\\b", -1)).hasSizeGreaterThan(20);
    }

    @Test
    void write_forACase_namesItsMachinesAndFixes() throws IOException {
        String card = text(pdf(example("quillbrook.yaml"), Paper.LETTER));
        assertThat(card)
                .contains("Machines: E1, E2, E3, S1, S2, S3, S4, C1, C2.", "What was done: ")
                .contains("E1 begin", "C2 reading", "Page 1 of 1");
        assertThat(text(pdf(example("quillbrook.yaml"), Paper.A4))).contains("Page 1 of 1");
    }

    /** Filled in and typed up as it stands, with the left and right of the card. */
    @Test
    void headings_typedUp_areReadWithoutAMapping(@TempDir Path folder) throws IOException {
        String csv = String.join(",", VisorCard.HEADINGS) + "\n"
                + "2027-04-05,mower,begin,12.5,,,,,\n"
                + "2027-05-04,mower,flat,61,drive left,plug on site,35,4,Sam (gate post)\n"
                + "2027-06-11,mower,flat,,caster right,wheel swap,20 min,0,\n"
                + "2027-10-30,mower,reading,402,,,,,\n";
        Sheet sheet = Sheet.read("card.csv", csv.getBytes(StandardCharsets.UTF_8), Map.of());
        assertThat(sheet.faults()).isEmpty();
        assertThat(sheet.ignored()).isEmpty();
        Path file = Files.writeString(folder.resolve("card.csv"), csv);
        Records records = RecordsFile.read(file, null);
        assertThat(records.unread()).isEmpty();
        assertThat(records.refused()).isEmpty();
        Learned learned = Learner.learn(records.log(), Background.NONE, 1.6);
        assertThat(learned.flats().get(0).counted()).isEqualTo(2);
        assertThat(learned.flats().get(0).hours()).isEqualTo(389.5);
        assertThat(learned.fixes().get(0).shares())
                .extracting(s -> s.name() + " " + s.count())
                .containsExactlyInAnyOrder("plug on site 1", "wheel swap 1");
        assertThat(records.log()
                        .machines()
                        .getOrDefault("mower", List.of())
                        .get(1)
                        .detail()
                        .note())
                .isEqualTo("Sam (gate post)");
    }
}
