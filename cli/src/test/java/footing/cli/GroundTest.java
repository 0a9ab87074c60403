package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.cli.text.Letters;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class GroundTest {
    private static final List<String> MACHINES = List.of("E1", "E2", "E3", "S1", "S2", "S3", "S4", "C1", "C2");

    private static JsonNode json(String machine) {
        Run run = Run.of("ground", Run.NINE_MACHINES, machine, "--json");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        return JsonMapper.shared().readTree(run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"E1", "E2", "E3", "S1", "S2", "S3", "S4", "C1", "C2"})
    void ground_anyMachine_fitsTheTerminalAndCarriesItsCaution(String machine) {
        Run run = Run.of("ground", Run.NINE_MACHINES, machine);

        assertThat(run.code()).isZero();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        String text = run.out().replaceAll("\\s+", " ");
        assertThat(text)
                .contains("no permission to mow a slope")
                .contains("operator's manual")
                .contains("15 degrees")
                .contains("Title 8, section 3563");
        assertThat(text.toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe");
        assertThat(run.out()).doesNotContain("NaN", "null", "?");
    }

    @Test
    void ground_json_everySlopeStandsBesideTheCaution() {
        for (String machine : MACHINES) {
            for (JsonNode p : json(machine).get("packages")) {
                assertThat(p.at("/slope/caution").asString()).contains("no permission", "3563");
                assertThat(p.toString().split("Degrees\"").length - 1)
                        .as("slope figures outside the slope object")
                        .isEqualTo(p.get("slope").toString().split("Degrees\"").length - 1);
            }
        }
    }

    @Test
    void ground_json_figuresAreThereOrSayWhyNot() {
        JsonNode fleet = json("E1");
        JsonNode carried = fleet.at("/packages/0");

        assertThat(fleet.get("format").asString()).isEqualTo("footing-ground/1");
        assertThat(carried.at("/drive/meanKilopascals").asDouble()).isBetween(83.0, 110.0);
        assertThat(carried.at("/drive/basis").asString()).isEqualTo("carried_over");
        double wet =
                carried.at("/slope/friction/2/likely/slidesAcrossDegrees/value").asDouble();
        double dry =
                carried.at("/slope/friction/0/likely/slidesAcrossDegrees/value").asDouble();
        assertThat(wet).isBetween(3.0, 8.0);
        assertThat(dry).isBetween(wet, 20.0);
        assertThat(json("S4").at("/packages/0/slope/tipSidewaysDegrees/lacks/0").asString())
                .isEqualTo("machines.S4.centerOfGravity.height");
    }

    /** Derived: track times rolling radius by the difference, r = 2.5·11.1/(1.5 + 11.1/11.8) in. */
    @Test
    void ground_driftOfUnlikeDrives_followsTrackAndRollingRadius() {
        double rolling = 2.5 * 11.1 / (1.5 + 11.1 / 11.8);
        double middle = rolling - 1.0 / 16;

        assertThat(json("E1").at("/packages/0/drift/radiusMillimeters").asDouble())
                .isCloseTo(41.9 * middle / 0.125 * 25.4, within(1e-6));
    }

    @Test
    void ground_foam_pressesHarderAndSitsOnItsOwnAxle() {
        JsonNode packages = json("E1").get("packages");
        double air = packages.get(0).at("/drive/meanKilopascals").asDouble();

        for (JsonNode p : packages) {
            if (p.get("id").asString().equals("foam-24")) {
                assertThat(p.at("/drive/meanKilopascals").asDouble()).isGreaterThan(1.2 * air);
                assertThat(p.at("/marking/wet").asString()).isEqualTo("more");
                assertThat(p.at("/stiffnessRatio/value").asDouble()).isCloseTo(1400 / 640.0, within(1e-9));
            }
        }
    }

    @Test
    void ground_statedLimit_isNamed() {
        assertThat(Run.of("ground", Run.NINE_MACHINES, "C2").out().replaceAll("\\s+", " "))
                .contains("12 degrees as the manual's limit for C2");
        assertThat(json("C2").at("/packages/0/slope/ceilingDegrees").asDouble()).isCloseTo(12, within(1e-9));
    }

    @Test
    void ground_caseWithoutMeasures_saysWhatToMeasure() {
        Run run = Run.in(Path.of("."), "", Letters.UTF8, "ground", Run.ONE_MACHINE, "mower");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("machines.mower.wheelLoads: each wheel on a scale");
    }

    @Test
    void ground_unknownMachine_isCodeTwo() {
        Run run = Run.of("ground", Run.NINE_MACHINES, "E9");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("no machine 'E9'");
    }
}
