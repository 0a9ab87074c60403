package footing.io.card;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.trial.RunPlan;
import footing.io.paper.Paper;
import footing.io.trial.Measure;
import footing.io.trial.RunSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunCardTest {
    private static String printed(Measure measure, int pairs, List<String> surfaces) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RunSheet sheet = new RunSheet(RunPlan.of(pairs, surfaces, 1), measure, "air & foam", "airless <3>", false);
        RunCard.write(sheet, Paper.LETTER, out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @CsvSource({"STEADY, damper over the strap", "DRIFT, spotter", "PEAK, Stop at the first slide", "AREA, chocks"})
    void write_whatCanHurt_cautionsStandAboveTheRuns(Measure measure, String caution) throws IOException {
        assertThat(printed(measure, 4, List.of("")))
                .containsSubsequence(caution, "operator's manual", "The runs, in this order");
    }

    @Test
    void write_manyRunsOnTwoSurfaces_printsEachOnce() throws IOException {
        String text = printed(Measure.STEADY, 30, List.of("dry fescue", "wet fescue"));

        assertThat(text).contains("Run sheet: steady pull, air & foam against airless <3>", "Page 1 of");
        assertThat(text.split("dry fescue", -1)).hasSize(61);
        assertThat(text.split("wet fescue", -1)).hasSize(61);
    }
}
