package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrialPlanTest {
    private static final String PILOT =
            Run.CASES.resolve("trial-day").resolve("pull.yaml").toString();

    @TempDir
    Path folder;

    private Run plan(String... options) {
        String[] words =
                Stream.concat(Stream.of("trial", "plan"), Stream.of(options)).toArray(String[]::new);
        return Run.in(folder, "", Letters.ASCII, words);
    }

    private static List<String[]> runs(String sheet) {
        return sheet.lines()
                .filter(l -> !l.startsWith("#"))
                .skip(1)
                .map(l -> l.split(",", -1))
                .toList();
    }

    @Test
    void plan_twoSurfaces_everyPairHasBothSidesNextToEachOther() {
        Run run = plan("--surface", "dry", "--surface", "wet", "--pairs", "7", "--a", "air", "--b", "foam");

        assertThat(run.code()).isZero();
        List<String[]> runs = runs(run.out());
        assertThat(runs).hasSize(28);
        for (int i = 0; i < runs.size(); i += 2) {
            String[] first = runs.get(i);
            String[] second = runs.get(i + 1);
            assertThat(List.of(first[3], second[3])).containsExactlyInAnyOrder("air", "foam");
            assertThat(second[1]).isEqualTo(first[1]);
            assertThat(second[2]).isEqualTo(first[2]);
        }
        assertThat(runs.stream().filter(r -> r[1].equals("wet"))).hasSize(14);
    }

    @Test
    void plan_pulls_cautionsOfStrapAndSlopeStandAboveTheRuns() {
        Run run = plan("--pairs", "2");

        assertThat(run.out()).containsSubsequence("# Straps, shackles", "operator's manual", "order,surface,pair,side");
    }

    @Test
    void plan_sameSeed_drawsTheSameSheetAndAnotherSeedAnother() {
        String one = plan("--pairs", "30", "--seed", "4").out();

        assertThat(plan("--pairs", "30", "--seed", "4").out()).isEqualTo(one);
        assertThat(plan("--pairs", "30", "--seed", "5").out()).isNotEqualTo(one);
    }

    @Test
    void plan_spreadNotStated_saysWhereItsScatterIsFrom() {
        assertThat(plan().err()).contains("common practice, no source");
        assertThat(plan("--spread", "8 %").err()).contains("scatter by 8 %").doesNotContain("common practice");
    }

    @Test
    void plan_noPairsStated_listsAsManyAsAdvised() {
        Run run = plan("--margin", "10 %", "--spread", "8 %");

        assertThat(run.err()).contains("Advised: 13 pairs on each surface.");
        assertThat(runs(run.out())).hasSize(26);
    }

    @Test
    void plan_pilot_takesItsScatter() {
        // 12.0 lbf between pairs, over the root of two, of a mean of 387 lbf (worked by hand from the file).
        assertThat(plan("--pilot", PILOT).err()).contains("scatter by 2 %").doesNotContain("usual value");
    }

    @Test
    void plan_csv_writesTheSheetAndShowsTheCautions() throws IOException {
        Run run = plan("--pairs", "3", "--csv", "runs.csv");

        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Straps, shackles", "Wrote runs.csv");
        assertThat(Files.readString(folder.resolve("runs.csv")))
                .isEqualTo(plan("--pairs", "3").out());
    }

    @Test
    void plan_pairsStated_saysWhatIsDrawnUpAndWhatWasAdvised() {
        Run run = plan("--pairs", "2", "--spread", "8 %");

        assertThat(run.err()).contains("Advised: 13 pairs", "Drawn up: two pairs on each surface, as you say, fewer");
        assertThat(runs(run.out())).hasSize(4);
    }

    @Test
    void plan_tinyScatter_saysWhyItAdvisesFive() {
        assertThat(plan("--spread", "1 %").err()).contains("Advised: five pairs", "the fewest that are ever advised");
    }

    @Test
    void plan_wrongPairsOrNames_areToldBeforeAnyAdvice() {
        assertThat(plan("--pairs", "0").err()).doesNotContain("Advised");
        assertThat(plan("--a", "B").err()).doesNotContain("Advised");
    }

    @Test
    void plan_sheet_printsRunsBoxesAndCautions() throws IOException {
        Run run = plan("--surface", "dry", "--pairs", "4", "--a", "air", "--b", "foam", "--sheet", "runs.pdf");

        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Wrote runs.pdf");
        assertThat(Files.readAllBytes(folder.resolve("runs.pdf"))).startsWith('%', 'P', 'D', 'F');
        assertThat(plan("--sheet", "runs.pdf").err()).contains("is there already");
    }

    @ParameterizedTest
    @CsvSource({
        "--measure, steedy, did you mean \"steady\"?",
        "--margin, 10, takes a share above 0 % and below 100 %",
        "--margin, 0 %, takes a share above 0 % and below 100 %",
        "--spread, 100 %, takes a share above 0 % and below 100 %",
        "--spread, NaN, takes a share above 0 % and below 100 %",
        "--margin, 0.01 %, a wider margin takes fewer",
        "--pairs, 0, a plan has from 1 pair to 4000 runs",
        "--pairs, 2001, a plan has from 1 pair to 4000 runs",
        "--a, B, need names that differ",
        "--csv, none/runs.csv, there is no folder",
        "--sheet, none/runs.pdf, there is no folder",
        "--pilot, none.yaml, there is no file none.yaml",
    })
    void plan_wrongOption_isCodeTwoAndSaysWhy(String option, String value, String why) {
        Run run = plan(option, value);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(why);
    }
}
