package footing.io.card;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.paper.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittingCardTest {
    private static PDDocument printed(String machine, String wheels, Paper paper) throws IOException {
        String text = Files.readString(Path.of("../cases/quillbrook.yaml"))
                .replaceFirst(
                        "height: 3.25 in, rake: 0.19 in\\}",
                        "height: 3.25 in, rake: 0.19 in}, fitted: {wheels: airless-24, tips: {rearLeft: 3.37 in}}");
        Case stated = CaseFile.read(text, "case").found().orElseThrow();
        Case.WheelPackage wanted = stated.packages().stream()
                .filter(p -> p.id().equals(wheels))
                .findFirst()
                .orElseThrow();
        ByteArrayOutputStream to = new ByteArrayOutputStream();
        FittingCard.write(stated, wanted, SetUp.of(stated, machine, wanted, null), paper, to);
        return Loader.loadPDF(to.toByteArray());
    }

    @ParameterizedTest
    @CsvSource({
        "E1, airless-24, LETTER",
        "E1, airless-24, A4",
        "E1, airless-20, A4",
        "S3, airless-20, LETTER",
        "S4, sealant-24, A4"
    })
    void card_anyPackage_isTwoTaggedSheetsWithItsCautions(String machine, String wheels, Paper paper)
            throws IOException {
        try (PDDocument card = printed(machine, wheels, paper)) {
            String text = new PDFTextStripper().getText(card).replaceAll("\\s+", " ");

            assertThat(card.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(card.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(card.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(text)
                    .contains("Fitting card: " + wheels + " on " + machine)
                    .contains("Torque of the lug nuts, from the operator's manual")
                    .contains("chocked, on stands")
                    .contains("no permission to mow a slope", "3563")
                    .doesNotContainPattern("\\d ?(ft-lb|Nm)");
            assertThat(text.toLowerCase(Locale.ROOT)).doesNotContain("nan ", "null", "is safe.", "slope is fine");
        }
    }

    @ParameterizedTest
    @CsvSource({"airless-24, true", "foam-24, false"})
    void card_tipsKeptWithTheCase_standInTheirPackagesBoxesAlone(String wheels, boolean shown) throws IOException {
        try (PDDocument card = printed("E1", wheels, Paper.LETTER)) {
            assertThat(new PDFTextStripper().getText(card).contains("3.37 in")).isEqualTo(shown);
        }
    }
}
