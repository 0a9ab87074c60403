package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class AssessTest {
    @Test
    void assess_aCase_answersInASentenceFirst() {
        Run run = Run.of("assess", Run.NINE_MACHINES, "--quick", "--futures", "500");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("Quillbrook Grounds")
                .containsPattern("(?m)^(Order|Swap|Leave|E1)")
                .contains("Crew estates, 3 people", "Crew school, one person", "500 ways it could go");
        assertThat(run.out()).doesNotContain("10 in 10").doesNotContain("NaN");
    }

    @Test
    void assess_oneMachine_showsTheLadderTheMoneyAndTheYears() {
        Run run = Run.of("assess", Run.ONE_MACHINE, "--futures", "300");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "Every choice for mower",
                        "Where the money goes",
                        "Three prices of an hour",
                        "by year",
                        "What moves the saving",
                        "What to find out first",
                        "told by the clock");
    }

    @Test
    void assess_json_printsOneDocumentAndNothingElse() {
        Run run = Run.of("assess", Run.NINE_MACHINES, "--json", "--quick", "--futures", "300", "--machine", "E2");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        JsonNode json = JsonMapper.shared().readTree(run.out());
        assertThat(json.get("format").asString()).isEqualTo("footing-answer/1");
        assertThat(json.get("futures").asInt()).isEqualTo(300);
        assertThat(json.get("machines").findValuesAsString("carried")).containsExactly("air-24");
        assertThat(run.out()).startsWith("{").endsWith("}\n");
    }

    @Test
    void assess_onMoreThreads_printsTheSameToTheLastDigit() {
        String[] first = {"assess", Run.ONE_MACHINE, "--json", "--futures", "3000", "--threads", "1"};
        String[] second = {"assess", Run.ONE_MACHINE, "--json", "--futures", "3000", "--threads", "5"};
        assertThat(Run.of(second).out()).isEqualTo(Run.of(first).out());
    }

    @Test
    void assess_csv_printsARowForEachChoice() {
        Run run = Run.of("assess", Run.ONE_MACHINE, "--csv", "--quick", "--futures", "300");
        assertThat(run.code()).isZero();
        assertThat(run.lines()).hasSize(6).first().asString().startsWith("machine,crew,carried,package,when");
    }

    @Test
    void assess_standardInput_isReadAsAFileIs() throws IOException {
        String text = Files.readString(Path.of(Run.ONE_MACHINE));
        Run run = Run.in(Path.of("."), text, Letters.ASCII, "assess", "-", "--csv", "--quick", "--futures", "300");
        assertThat(run.out())
                .isEqualTo(Run.of("assess", Run.ONE_MACHINE, "--csv", "--quick", "--futures", "300")
                        .out());
    }

    @Test
    void assess_machineWithSlopeFigures_isToldTheCautionAsWell() {
        String text = Run.of("assess", Run.NINE_MACHINES, "--machine", "E1", "--quick", "--futures", "200")
                .out()
                .replaceAll("\\s+", " ");
        int slope = text.lastIndexOf("would slide across");
        assertThat(slope).isPositive();
        assertThat(text.indexOf("no permission to mow a slope")).isGreaterThan(slope);
    }

    @Test
    void assess_unknownMachine_namesThoseThereAre() {
        Run run = Run.of("assess", Run.NINE_MACHINES, "--machine", "E22");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("'E22'", "E1, E2, E3, S1", "did you mean \"E2\"");
    }

    @ParameterizedTest
    @CsvSource({
        "--futures, 1, between 2",
        "--futures, many, many",
        "--threads, 0, between 1",
        "--threshold, 80, a share",
        "--threshold, 30 %, between 50%",
        "--threshold, 100 %, between 50%",
        "--seed, x, x"
    })
    void assess_unusableOption_isCodeTwoWithoutOutput(String option, String value, String said) {
        Run run = Run.of("assess", Run.ONE_MACHINE, option, value);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said);
    }

    @Test
    void assess_threshold_movesTheVerdict() {
        String[] sure = {"assess", Run.NINE_MACHINES, "--quick", "--futures", "500", "--json", "--machine", "E1"};
        String[] surer = {
            "assess",
            Run.NINE_MACHINES,
            "--quick",
            "--futures",
            "500",
            "--json",
            "--machine",
            "E1",
            "--threshold",
            "99%"
        };
        assertThat(verdict(Run.of(sure))).isEqualTo("pays");
        assertThat(verdict(Run.of(surer))).isEqualTo("close");
    }

    private static String verdict(Run run) {
        return JsonMapper.shared().readTree(run.out()).at("/machines/0/verdict").asString();
    }

    @Test
    void assess_jsonAndCsv_excludeEachOther() {
        assertThat(Run.of("assess", Run.ONE_MACHINE, "--json", "--csv").code()).isEqualTo(2);
    }

    @Test
    void assess_brokenFile_listsAllThatIsWrongAndPrintsNothing(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("broken.yaml");
        String text = Files.readString(Path.of(Run.ONE_MACHINE));
        Files.writeString(file, text.replace("wage: 30", "wage: lots").replace("crewOutput: 100 %", "crewOutpt: 1"));
        for (String form : new String[] {"--json", "--csv", "--quick"}) {
            Run run = Run.of("assess", file.toString(), form);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err())
                    .contains("broken.yaml:", "crews.me.wage", "lots", "crewOutpt", "crewOutput")
                    .doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void assess_missingFile_isCodeTwo(@TempDir Path folder) {
        Run run = Run.of("assess", folder.resolve("none.yaml").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("there is no file").doesNotContain("Exception");
        assertThat(Run.of("assess", folder.toString()).err()).contains("folder");
    }

    @Test
    void assess_askedToStop_printsWhatIsKnownWithCodeOne() {
        Stop stop = new Stop();
        stop.ask();
        Run run = Run.in(Path.of("."), "", Letters.ASCII, stop, "assess", Run.ONE_MACHINE);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("STOPPED before everything was known", "Every choice for mower");
        assertThat(run.err()).contains("stopped");
    }
}
