package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FitTest {
    private static final double INCH = 25.4;

    private static String text(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @CsvSource({
        "E1, air-24, fits",
        "E1, foam-24, fits",
        "E1, airless-24, fits",
        "E1, airless-20, does not fit",
        "S1, airless-20, fits",
        "S3, airless-20, check",
        "C2, airless-20, check",
        "S4, airless-24, check"
    })
    void fit_package_isJudgedWithinTheTerminal(String machine, String wheels, String verdict) {
        Run run = Run.of("fit", Run.NINE_MACHINES, machine, wheels);

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(run.lines().get(0)).endsWith(": " + verdict + ".");
        assertThat(text(run)).contains("no permission to mow a slope", "operator's manual", "Block and support");
        assertThat(text(run).toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe");
        assertThat(run.out()).doesNotContain("NaN");
    }

    @Test
    void fit_otherPattern_showsBothNumbers() {
        assertThat(text(Run.of("fit", Run.NINE_MACHINES, "E1", "airless-20")))
                .contains("bolt holes 4, machine 5")
                .contains("does not fit");
    }

    @Test
    void fit_openQuestions_areNamedWithOneActEach() {
        Run run = Run.of("fit", Run.NINE_MACHINES, "S3", "airless-20");

        assertThat(text(run)).contains("Left to find out", "machines.S3.hub.drive.seat");
    }

    @Test
    void fit_airlessOnE1_turnsRestoreTheDeck() {
        JsonNode fit = JsonMapper.shared()
                .readTree(Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", "--json")
                        .out());
        double rear = fit.at("/setUp/driveAxle/riseMillimeters").asDouble();
        double front = fit.at("/setUp/casterAxle/riseMillimeters").asDouble();

        assertThat(fit.get("format").asString()).isEqualTo("footing-fit/1");
        assertThat(rear).isCloseTo(0.3 * INCH, within(1e-9));
        assertThat(front).isCloseTo(0.2 * INCH, within(1e-9));
        double atRearHanger = rear + (front - rear) * 14 / 53.7;
        assertThat(fit.at("/setUp/hangerTurns/rear").asDouble()).isCloseTo(atRearHanger / 1.5, within(1e-9));
        assertThat(fit.at("/setUp/slope/caution").asString()).contains("3563");
        assertThat(fit.at("/tests/0/margin").asDouble()).isZero();
    }

    @Test
    void fit_target_isReachedByItsTurns() {
        JsonNode fit = JsonMapper.shared()
                .readTree(Run.of(
                                "fit",
                                Run.NINE_MACHINES,
                                "E1",
                                "air-24",
                                "--height",
                                "3 in",
                                "--rake",
                                "0.19 in",
                                "--json")
                        .out());

        assertThat(fit.at("/setUp/hangerTurns/rear").asDouble()).isCloseTo(0.25 * INCH / 1.5, within(1e-9));
        assertThat(fit.at("/setUp/hangerTurns/front").asDouble()).isCloseTo(0.25 * INCH / 1.5, within(1e-9));
    }

    @Test
    void fit_measuredTips_areJudgedAgainstTheTargets() {
        Run good = Run.of(
                "fit", Run.NINE_MACHINES, "E1", "airless-24", "--measured", "3.35 in, 3.35 in, 3.16 in, 3.16 in");
        Run crooked =
                Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", "--measured", "3.5 in, 3.2 in, 3.1 in, 3.1 in");

        assertThat(text(good)).contains("rake 0.19 in").doesNotContain("set it again");
        assertThat(text(crooked)).contains("rear, left less right 0.3 in", "set it again");
    }

    @Test
    void fit_tipsKeptWithTheCase_areJudgedWithoutBeingAskedFor(@TempDir Path folder) throws IOException {
        String kept = Files.readString(Path.of(Run.NINE_MACHINES))
                .replaceFirst(
                        "threadPitch: 1.5 mm, height: 3.25 in, rake: 0.19 in}",
                        "threadPitch: 1.5 mm, height: 3.25 in, rake: 0.19 in}, fitted: {wheels: airless-24,"
                                + " tips: {rearLeft: 3.35 in, rearRight: 3.35 in, frontLeft: 3.16 in, frontRight: 3.16 in},"
                                + " turns: {rear: -4, front: 3.5}}");
        Path file = Files.writeString(folder.resolve("kept.yaml"), kept);
        Run run = Run.of("fit", file.toString(), "E1", "airless-24");

        assertThat(run.err()).isEmpty();
        assertThat(text(run)).contains("rake 0.19 in", "rear hangers lowered -0.24 in", "set it again");
        assertThat(text(Run.of("fit", file.toString(), "E1", "foam-24"))).doesNotContain("What was measured");
        assertThat(JsonMapper.shared()
                        .readTree(Run.of("fit", file.toString(), "E1", "airless-24", "--json")
                                .out())
                        .get("measured"))
                .hasSize(6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--measured | 3 in | four heights",
                "--measured | 3 in, 3 in, 3 in, 3 | a length with its unit",
                "--height | tall | a length with its unit",
                "--rake | 2 psi | a length with its unit"
            })
    void fit_lengthOfNoSort_isCodeTwo(String option, String value, String told) {
        Run run = Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", option, value);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(told);
    }

    @Test
    void fit_card_isAPdfNotWrittenOverUnasked(@TempDir Path folder) throws IOException {
        String file = folder.resolve("card.pdf").toAbsolutePath().toString();
        Run first = Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", "--json", "--card", file, "--paper", "a4");
        Run again = Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", "--card", file);
        Run odd = Run.of("fit", Run.NINE_MACHINES, "E1", "airless-24", "--card", file, "--paper", "legal", "--force");

        assertThat(first.code()).isZero();
        assertThat(JsonMapper.shared().readTree(first.out()).get("format").asString())
                .isEqualTo("footing-fit/1");
        assertThat(new String(Files.readAllBytes(Path.of(file)), java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("--force");
        assertThat(odd.code()).isEqualTo(2);
    }

    @Test
    void fit_unknownPackage_isCodeTwo() {
        Run run = Run.of("fit", Run.NINE_MACHINES, "E1", "airles-24");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("did you mean");
    }

    @Test
    void assess_packageThatDoesNotFit_isNeverRecommended(@TempDir Path folder) throws IOException {
        String all = Files.readString(Path.of(Run.NINE_MACHINES));
        String wrong = all.replace(
                "bolts: 5, circle: 4.5 in, seat: cone, offset: 0.25 in",
                "bolts: 4, circle: 4 in, seat: cone, offset: 0.25 in");
        assertThat(wrong).isNotEqualTo(all);
        Path file = Files.writeString(folder.resolve("wrong.yaml"), wrong);
        Run run = Run.of("assess", file.toString(), "--quick", "--json", "--machine", "E1", "--futures", "200");

        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("airless-24", "does not fit", "bolt holes: 4, machine 5");
        JsonNode machine = JsonMapper.shared().readTree(run.out()).at("/machines/0");
        assertThat(machine.at("/recommended/id").asString()).isNotEqualTo("airless-24");
        assertThat(machine.get("entries").toString()).doesNotContain("\"airless-24\"");
    }
}
