package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import footing.core.trial.Caveat;
import footing.core.trial.Condition;
import footing.core.trial.RunPlan;
import footing.core.trial.Side;
import footing.core.trial.TrialResult;
import footing.core.trial.Verdict;
import footing.io.form.Problem;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class TrialFileTest {
    static final Path DAY = Path.of("..", "cases", "trial-day");

    private static final String HEAD = """
            format: footing-trial/1
            kind: pull
            title: t
            a: {name: air, pressure: 12 psi}
            b: {name: solid}
            """;

    @ParameterizedTest
    @CsvSource({
        "pull.yaml, better",
        "ride.yaml, alike",
        "pivot.csv, not enough runs to tell",
        "opposed.yaml, not enough runs to tell",
        "logged-pull.yaml, better",
        "prints.yaml, alike"
    })
    void read_demoDay_givesEachVerdict(String file, String verdict) throws IOException {
        StatedTrial stated = accepted(TrialFile.read(DAY.resolve(file)));
        TrialResult result = TrialResult.of(stated.trial());
        var json = JsonMapper.shared().readTree(TrialJson.of(stated, result, List.of()));
        assertThat(json.get("verdict").asString()).isEqualTo(verdict);
        assertThat(json.get("cautions")).isNotEmpty();
    }

    @Test
    void read_sheet_takesKindSidesAndUnitsFromTheHeading() {
        String sheet = "side;steady (N);surface;pressure (psi)\nfoam;900;dry;\nair;800;dry;11\n";
        StatedTrial stated = accepted(TrialFile.read(sheet, "pull-day.csv"));
        assertThat(stated.title()).isEqualTo("Trial sheet: pull day");
        assertThat(stated.trial().a().name()).isEqualTo("foam");
        assertThat(stated.trial().runs()).extracting(r -> r.value()).containsExactly(900.0, 800.0);
        assertThat(stated.trial().runs().get(1).conditions().number(Condition.PRESSURE))
                .isCloseTo(75842.3, Offset.offset(0.1));
    }

    @Test
    void read_filledRunSheet_isReadBackInItsOrder() throws IOException {
        RunPlan plan = RunPlan.of(4, List.of("dry", "wet"), 9);
        StringWriter out = new StringWriter();
        new RunSheet(plan, Measure.STEADY, "air", "solid, new", false).write(out);
        assertThat(out.toString()).startsWith("# ").contains("slope safe");
        String filled = out.toString()
                .lines()
                .map(l -> l.replaceFirst(",(out|back),,", ",$1,412,"))
                .collect(Collectors.joining("\n"));
        StatedTrial stated = accepted(TrialFile.read(filled, "sheet.csv"));
        List<Side> planned = plan.runs().stream().map(RunPlan.Planned::side).toList();
        boolean solidFirst = planned.get(0) == Side.B;
        assertThat(stated.trial().runs().stream()
                        .map(r -> solidFirst ? r.side().other() : r.side())
                        .toList())
                .isEqualTo(planned);
        assertThat(TrialResult.of(stated.trial()).caveats())
                .doesNotHaveAnyElementsOfTypes(Caveat.Apart.class, Caveat.UsedLane.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "runs: [{side: a, steady: 4}] | runs[0].steady: read '4'; a force needs its unit; lbf, N, kN",
                "runs: [{side: a, stedy: 4 lbf}] | did you mean \"steady\"?",
                "runs: [{steady: 4 lbf}] | runs[0].side: missing",
                "runs: [{side: c, steady: 4 lbf}] | runs[0].side: read 'c'",
                "runs: [{side: a, peak: 4 lbf}] | the trial judges steady pull",
                "runs: [{side: a, steady: 4 lbf, surface: x}, {side: b, steady: 4 lbf}] | runs[1].surface: missing",
                "runs: [{winner: a}, {side: b, steady: 4 lbf}] | runs[1].winner: missing",
                "runs: [{side: a, log: gone.csv}] | no such file",
                "runs: [{side: a, log: ../../secret.csv}] | no such file",
                "runs: [] | an empty list says nothing",
                "margin: 0 %\\nruns: [{side: a, steady: 4 lbf}] | above 0 %"
            })
    void read_brokenFile_saysWhatWouldFit(String rest, String told) {
        assertThat(told(TrialFile.read(HEAD + rest.replace("\\n", "\n"), "t.yaml")))
                .contains(told);
    }

    @Test
    void read_unknownKind_namesTheNearest() {
        assertThat(told(TrialFile.read(HEAD.replace("kind: pull", "kind: pul"), "t.yaml")))
                .contains("did you mean \"pull\"?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"side,steady (lbf)\nair,4\nfoam,5\nsolid,6\n", "a,b\n1,2\n", ""})
    void read_brokenSheet_isRefused(String sheet) {
        assertThat(told(TrialFile.read(sheet, "t.csv"))).isNotBlank();
    }

    @Test
    void read_rideLogInG_isToldOrTaken(@TempDir Path folder) throws IOException {
        StringBuilder log = new StringBuilder("Time (ms),ax,ay,az\n");
        for (int i = 0; i < 1000; i++) {
            log.append(i * 10)
                    .append(",0.01,0.02,")
                    .append(1 + 0.1 * Math.sin(i * 0.3))
                    .append('\n');
        }
        Files.writeString(folder.resolve("r.csv"), log);
        String text = """
                format: footing-trial/1
                kind: ride
                title: t
                a: {name: x}
                b: {name: y}
                runs: [{side: a, log: r.csv}]
                """;
        Files.writeString(folder.resolve("t.yaml"), text);
        StatedTrial stated = accepted(TrialFile.read(folder.resolve("t.yaml")));
        // A sine of 0.1 g at 4.77 Hz under Wk of about 1.03.
        assertThat(stated.trial().runs().get(0).value()).isCloseTo(0.71, Offset.offset(0.02));
        assertThat(stated.logs()).isNotEmpty();
        Files.writeString(folder.resolve("t.yaml"), text + "logUnit: m/s2\n");
        assertThat(told(TrialFile.read(folder.resolve("t.yaml")))).contains("look like g", "logUnit: g");
    }

    @Test
    void schema_demoDay_isAcceptedAndBrokenIsNot() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(TrialSchema.json());
        for (String file : List.of("pull.yaml", "ride.yaml", "opposed.yaml", "logged-pull.yaml", "prints.yaml")) {
            String text = Files.readString(DAY.resolve(file));
            assertThat(schema.validate(text, InputFormat.YAML)).as(file).isEmpty();
            assertThat(schema.validate(text.replace("name:", "nome:"), InputFormat.YAML))
                    .isNotEmpty();
        }
    }

    static StatedTrial accepted(TrialReading reading) {
        assertThat(reading).as(told(reading)).isInstanceOf(TrialReading.Accepted.class);
        return ((TrialReading.Accepted) reading).stated();
    }

    static String told(TrialReading reading) {
        return reading instanceof TrialReading.Refused refused
                ? refused.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"))
                : "";
    }

    @Test
    void result_clearPull_isToldVerdictFirst() throws IOException {
        StatedTrial stated = accepted(TrialFile.read(DAY.resolve("pull.yaml")));
        TrialResult result = TrialResult.of(stated.trial());
        assertThat(result.verdict()).isEqualTo(Verdict.B_MORE);
        assertThat(TrialJson.of(stated, result, List.of())).contains("\"better\" : \"b\"", "Airless is better:");
    }
}
