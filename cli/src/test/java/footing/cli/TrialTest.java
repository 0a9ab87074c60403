package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TrialTest {
    /** Newtons in a pound-force: 0.45359237 kg times 9.80665 m/s², both exact by definition. */
    private static final double POUND_FORCE = 4.4482216152605;

    @TempDir
    Path folder;

    private static String day(String file) {
        return Run.CASES.resolve("trial-day").resolve(file).toString();
    }

    private static JsonNode json(String file) {
        Run run = Run.of("trial", day(file), "--json");
        assertThat(run.code()).isZero();
        return JsonMapper.shared().readTree(run.out());
    }

    private Run judged(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return Run.in(folder, "", Letters.ASCII, "trial", name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pull.yaml", "opposed.yaml", "logged-pull.yaml", "ride.yaml", "pivot.csv"})
    void trial_anyOfTheDay_fitsTheTerminalAndCarriesItsCautions(String file) {
        Run run = Run.of("trial", day(file));

        assertThat(run.code()).isZero();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(run.out()).contains("Cautions", "operator's manual").doesNotContain("NaN", "null", "?");
        String spoken = run.out().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        assertThat(spoken.replace("no slope is called safe", "").replace("no result here calls a slope safe", ""))
                .doesNotContain("safe");
    }

    @Test
    void trial_pulls_verdictStandsFirstThenItsEvidence() {
        String text = Run.of("trial", day("pull.yaml")).out().replaceAll("\\s+", " ");

        assertThat(text)
                .containsSubsequence(
                        "Airless is better: steady pull of 410 lbf against 365 lbf, 12 % more.",
                        "-45.5 lbf, 95 % interval -53.1 to -37.9 lbf, from twelve pairs",
                        "dry fescue:",
                        "wet fescue:",
                        "Held equal: machine, operator and fuel filled to the mark.",
                        "Nobody in line with the strap");
    }

    @Test
    void trial_pullsJson_figuresAgreeWithThoseWorkedByHand() {
        JsonNode json = json("pull.yaml");
        // The twelve differences, A less B, add up to -546 lbf; their squared deviations to 1575 (worked by hand).
        double mean = -546 / 12.0 * POUND_FORCE;
        double spread = Math.sqrt(1575 / 11.0) * POUND_FORCE;
        // Student's t, 0.975, 11 degrees of freedom: 2.201 (any printed table).
        double half = 2.201 * spread / Math.sqrt(12);

        assertThat(json.get("format").asString()).isEqualTo("footing-trial-result/1");
        assertThat(json.get("verdict").asString()).isEqualTo("better");
        assertThat(json.get("better").asString()).isEqualTo("b");
        assertThat(json.get("pairs").asInt()).isEqualTo(12);
        assertThat(json.get("difference").asDouble()).isCloseTo(mean, within(1e-9));
        assertThat(json.get("spread").asDouble()).isCloseTo(spread, within(1e-9));
        assertThat(json.get("low95").asDouble()).isCloseTo(mean - half, within(0.01));
        assertThat(json.get("high95").asDouble()).isCloseTo(mean + half, within(0.01));
        assertThat(json.at("/surfaces/dry fescue/pairs").asInt()).isEqualTo(6);
        assertThat(json.get("cautions").toString()).contains("strap", "slope");
    }

    @Test
    void trial_opposedPulls_areJudgedBySignsAndDoubted() {
        JsonNode json = json("opposed.yaml");

        assertThat(json.get("wins").asInt()).isEqualTo(1);
        assertThat(json.get("losses").asInt()).isEqualTo(3);
        assertThat(json.get("evens").asInt()).isEqualTo(1);
        // Two-sided: twice the chance of at most one win in four tosses, (1 + 4) / 16.
        assertThat(json.get("chanceIfNoDifference").asDouble()).isCloseTo(0.625, within(1e-12));
        assertThat(json.get("better").isNull()).isTrue();
        assertThat(json.get("caveats").toString()).contains("Ana", "pressure of airless is not noted");
    }

    @Test
    void trial_wrongValues_areAllNamedWithLineAndPath() throws IOException {
        Run run = judged("bad.yaml", """
                format: footing-trial/1
                kind: pull
                a: {name: one}
                b: {name: two}
                runs:
                  - {side: a, steady: 417 lbf}
                  - {side: c, steady: 417 lbf}
                  - {side: b, steady: -3 lbf}
                """);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("bad.yaml:7: runs[1].side: read 'c'", "did you mean \"a\"?")
                .contains("bad.yaml:8: runs[2].steady: read '-3 lbf'", "try: 420 lbf");
    }

    @Test
    void trial_noSuchFile_isCodeTwo() {
        Run run = Run.in(folder, "", Letters.ASCII, "trial", "nothing.yaml");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("there is no file nothing.yaml");
    }

    @Test
    void trial_folder_isCodeTwo() {
        Run run = Run.of("trial", folder.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("it is a folder");
    }

    @Test
    void trial_nothingNamed_saysWhatToName() {
        Run run = Run.of("trial");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("name a trial file, or the command plan");
    }

    @Test
    void trial_schema_isOneJsonDocument() {
        Run run = Run.of("trial", "--schema");

        assertThat(run.code()).isZero();
        assertThat(JsonMapper.shared().readTree(run.out()).toString()).contains("footing-trial/1");
    }
}
