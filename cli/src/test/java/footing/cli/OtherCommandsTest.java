package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

class OtherCommandsTest {
    @Test
    void demo_run_leavesCaseAnswerAndAnInventedTrialDay(@TempDir Path folder) throws IOException {
        Run run = Run.in(folder, "", Letters.UTF8, "demo", "--quick", "--futures", "300");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Quillbrook Grounds").contains("footing-demo/quillbrook.yaml");
        assertThat(run.err()).contains("footing-demo/answer.json");
        String json = Files.readString(folder.resolve("footing-demo/answer.json"));
        assertThat(JsonMapper.shared().readTree(json).get("machines")).hasSize(9);
        assertThat(folder.resolve("footing-demo/quillbrook.yaml")).hasSameTextualContentAs(Path.of(Run.NINE_MACHINES));
        Run trial = Run.in(folder, "", Letters.ASCII, "trial", "footing-demo/trial-day/logged-pull.yaml");
        assertThat(trial.code()).isZero();
        assertThat(trial.out()).contains("invented");
        Run photo = Run.in(
                folder,
                "",
                Letters.ASCII,
                "photo",
                "print",
                "footing-demo/trial-day/photos/print.jpg",
                "--sheet",
                "letter");
        assertThat(photo.out()).contains("Print area");
        Run prints = Run.in(folder, "", Letters.ASCII, "trial", "footing-demo/trial-day/prints.yaml");
        assertThat(prints.code()).isZero();
        assertThat(prints.out()).contains("About the photos", "drawn pictures only");
    }

    @Test
    void assess_trial_quotesItsVerdictBelowTheMoney() {
        String trial = Run.CASES.resolve("trial-day").resolve("pull.yaml").toString();
        Run run = Run.of("assess", Run.ONE_MACHINE, "--quick", "--futures", "300", "--trial", trial);

        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .containsSubsequence(
                        "Tried side by side", "24 runs, 2027-02-06", "Airless is better", "no slope is called safe");
        assertThat(Run.of("assess", Run.ONE_MACHINE, "--trial", trial, "--json").code())
                .isEqualTo(2);
        assertThat(Run.of("assess", Run.ONE_MACHINE, "--trial", "none.yaml").err())
                .contains("there is no file none.yaml");
    }

    @Test
    void demo_json_printsTheSameDocumentItLeaves(@TempDir Path folder) throws IOException {
        Run run = Run.in(folder, "", Letters.UTF8, "demo", "--quick", "--futures", "300", "--json");
        assertThat(run.out()).isEqualTo(Files.readString(folder.resolve("footing-demo/answer.json")));
    }

    @Test
    void demo_folderCannotBeMade_isOneSentenceAndCodeOne(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("footing-demo"), "in the way");
        Run run = Run.in(folder, "", Letters.UTF8, "demo", "--quick", "--futures", "300");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("footing-demo").doesNotContain("\tat ");
    }

    @Test
    void check_goodCase_saysWhatItHolds() {
        Run run = Run.of("check", Run.NINE_MACHINES);
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("nine machines, three crews, eight wheel packages", "are yours");
    }

    @Test
    void check_defaults_listsPlaceValueAndReason() {
        Run run = Run.of("check", Run.ONE_MACHINE, "--defaults");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("money.discountRate: 8 %\n    common practice, no source");
        assertThat(run.out()).doesNotContain("crews.me.burden");
    }

    @Test
    void check_badCase_isCodeTwo() {
        Run run = Run.in(Path.of("."), "format: footing-case/1\n", Letters.ASCII, "check", "-");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("standard input:", "title", "machines", "crews");
    }

    @Test
    void schema_asked_isAJsonSchema() {
        Run run = Run.of("schema");
        assertThat(run.code()).isZero();
        assertThat(JsonMapper.shared().readTree(run.out()).get("$schema").asString())
                .contains("json-schema.org");
    }
}
