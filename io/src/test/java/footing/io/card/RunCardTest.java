package footing.io.card;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.trial.RunPlan;
import footing.core.trial.TrialKind;
import footing.io.paper.Paper;
import footing.io.trial.Measure;
import footing.io.trial.RunSheet;
import footing.io.words.TrialCautions;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RunCardTest {
    private static byte[] written(Measure measure, int pairs, List<String> surfaces) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RunSheet sheet = new RunSheet(RunPlan.of(pairs, surfaces, 1), measure, "air & foam", "airless <3>", false);
        RunCard.write(sheet, Paper.LETTER, out);
        return out.toByteArray();
    }

    private static String printed(Measure measure, int pairs, List<String> surfaces) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(written(measure, pairs, surfaces))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @CsvSource({"STEADY, damper over the strap", "DRIFT, spotter", "PEAK, Stop at the first slide", "AREA, chocks"})
    void write_whatCanHurt_cautionsStandAboveTheRuns(Measure measure, String caution) throws IOException {
        assertThat(printed(measure, 4, List.of("")))
                .containsSubsequence(caution, "operator's manual", "The runs, in this order");
    }

    @ParameterizedTest
    @EnumSource(TrialKind.class)
    void write_anyKind_allItsCautionsStandAboveTheRuns(TrialKind kind) throws IOException {
        Measure first = Arrays.stream(Measure.values())
                .filter(m -> m.kind() == kind)
                .findFirst()
                .orElseThrow();
        String text = printed(first, 2, List.of(""));
        int runs = text.indexOf("The runs, in this order");

        assertThat(TrialCautions.of(kind))
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(c -> assertThat(text.indexOf(c.replace('\u2019', '\'')))
                        .as(c)
                        .isBetween(0, runs));
    }

    @Test
    void write_manyRunsOnTwoSurfaces_printsEachOnce() throws IOException {
        String text = printed(Measure.STEADY, 30, List.of("dry fescue", "wet fescue"));

        assertThat(text).contains("Run sheet: steady pull, air & foam against airless <3>", "Page 1 of");
        assertThat(text.split("dry fescue", -1)).hasSize(61);
        assertThat(text.split("wet fescue", -1)).hasSize(61);
    }

    /** The five upright lines of the boxes, by how dark they are across: a clipped one would be half as dark. */
    @Test
    void write_boxes_haveTheirLastBorderInFull() throws IOException {
        List<Integer> lines = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(written(Measure.STEADY, 12, List.of("")))) {
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 200);
            int across = 0;
            for (int x = page.getWidth() / 4; x < page.getWidth(); x++) {
                int dark = darkest(page, x);
                if (dark > 30) {
                    across += dark;
                } else if (across > 0) {
                    lines.add(across);
                    across = 0;
                }
            }
        }

        assertThat(lines).hasSize(5);
        assertThat(lines.get(4)).isGreaterThan(lines.get(2) * 7 / 10);
    }

    /** The least darkness of the darkest 300 pixels below each other in a column, of 255. */
    private static int darkest(BufferedImage page, int x) {
        int most = 0;
        for (int y = 0; y + 300 < page.getHeight(); y += 50) {
            int least = 255;
            for (int i = 0; i < 300; i++) {
                least = Math.min(least, 255 - (page.getRGB(x, y + i) & 0xFF));
            }
            most = Math.max(most, least);
        }
        return most;
    }
}
