package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Trials a case names, or that are given beside it: prints for the ground, verdicts beside the money. */
class NamedTrialsTest {
    private static final Path DAY = Run.CASES.resolve("trial-day");
    private static final String PRINTS = """
            format: footing-trial/1
            kind: print
            title: Big prints
            a: {name: drive20-air, pressure: 12 psi, atLoad: 415 lb, day: 2027-02-06}
            b: {name: airless}
            runs:
              - {side: a, length: 5 in, width: 8 in, area: 36 in2}
              - {side: b, area: 30 in2}
              - {side: b, area: 30 in2}
              - {side: a, length: 5.2 in, width: 8 in, area: 38 in2, day: 2027-02-08}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectory(folder.resolve("trials"));
        Files.writeString(folder.resolve("trials/prints.yaml"), PRINTS);
        Files.copy(DAY.resolve("pull.yaml"), folder.resolve("trials/pull.yaml"));
        String text = Files.readString(Path.of(Run.NINE_MACHINES));
        Files.writeString(folder.resolve("plain.yaml"), text);
        Files.writeString(folder.resolve("case.yaml"), text + "\ntrials: [trials/prints.yaml, trials/pull.yaml]\n");
    }

    private Run run(String... args) {
        List<String> all = new java.util.ArrayList<>(List.of(args));
        all.replaceAll(a -> a.endsWith(".yaml") ? folder.resolve(a).toString() : a);
        return Run.in(folder, "", Letters.ASCII, all.toArray(String[]::new));
    }

    private static String said(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    /** 415 lb on 37 square inches; the machine's drive carries 415 lb at 12 psi. */
    @Test
    void ground_caseThatNamesPrints_restsOnThem() {
        Run run = run("ground", "case.yaml", "S1", "--json");
        JsonNode drive = JsonMapper.shared().readTree(run.out()).at("/packages/0/drive");

        double kilopascals = 415 * 0.45359237 * 9.80665 / (37 * 0.0254 * 0.0254) / 1000;
        assertThat(drive.get("meanKilopascals").asDouble()).isCloseTo(kilopascals, within(0.001));
        assertThat(drive.get("basis").asString()).isEqualTo("print");
        assertThat(drive.at("/printsTaken/count").asInt()).isEqualTo(2);
        assertThat(drive.at("/printsTaken/days").size()).isEqualTo(2);
        assertThat(said(run("ground", "case.yaml", "S1")))
                .contains(
                        "measured, by its print", "the mean of two prints from 2027-02-06 to 2027-02-08", "Big prints")
                .containsSubsequence("Tried side by side", "Airless is better", "no slope is called safe");
    }

    @Test
    void ground_trialGivenBesideACase_isTheSameAsNamed() {
        String named = run("ground", "case.yaml", "S1", "--json").out();
        String given = run(
                        "ground",
                        "plain.yaml",
                        "S1",
                        "--json",
                        "--trial",
                        "trials/prints.yaml",
                        "--trial",
                        "trials/pull.yaml")
                .out();

        assertThat(given).isEqualTo(named);
        assertThat(run("ground", "plain.yaml", "S1", "--json").out()).isNotEqualTo(named);
    }

    @Test
    void ground_printsAtAnotherPressure_changeNothingAndSaySo() throws IOException {
        Files.writeString(folder.resolve("trials/prints.yaml"), PRINTS.replace("12 psi", "14 psi"));

        Run run = run("ground", "case.yaml", "S1", "--json");
        JsonNode packages = JsonMapper.shared().readTree(run.out()).get("packages");
        assertThat(packages)
                .isEqualTo(JsonMapper.shared()
                        .readTree(run("ground", "plain.yaml", "S1", "--json").out())
                        .get("packages"));
        assertThat(run.err()).contains("prints of drive20-air", "another pressure");
    }

    @Test
    void assess_caseThatNamesTrials_quotesThemBesideTheMoney() {
        Run run = run("assess", "case.yaml", "--quick", "--futures", "300");

        assertThat(run.code()).isZero();
        assertThat(said(run)).containsSubsequence("Tried side by side", "24 runs, 2027-02-06", "Airless is better");
        String json = run("assess", "case.yaml", "--quick", "--futures", "300", "--json")
                .out();
        assertThat(json)
                .isEqualTo(run("assess", "plain.yaml", "--quick", "--futures", "300", "--json")
                        .out());
    }

    @Test
    void check_trialThatCannotBeUsed_saysWhichAndWhy() throws IOException {
        Files.writeString(folder.resolve("trials/pull.yaml"), "format: footing-trial/1\nkind: pull\n");
        Files.writeString(
                folder.resolve("lost.yaml"),
                Files.readString(folder.resolve("case.yaml")).replace("trials/prints.yaml", "../prints.yaml"));

        Run run = run("ground", "lost.yaml", "S1");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("trials[0]", "no file beside or below this case")
                .contains("trials/pull.yaml", "this trial can't be used", "footing trial trials/pull.yaml");
    }

    @Test
    void ground_demoPrints_takeTheirPhoto() {
        Run run = Run.of(
                "ground",
                Run.NINE_MACHINES,
                "S1",
                "--trial",
                DAY.resolve("prints.yaml").toString());

        assertThat(run.err()).isEmpty();
        assertThat(said(run))
                .contains("The print of drive20-air was measured: the mean of three prints on 2027-02-06")
                .contains("The print of drive20-airless was measured");
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }
}
