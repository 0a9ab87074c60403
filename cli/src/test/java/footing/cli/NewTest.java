package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import footing.io.casefile.CaseFile;
import footing.io.interview.Interview;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewTest {
    @TempDir
    Path folder;

    private Run run(String input, String... args) {
        return Run.in(folder, input, Letters.UTF8, args);
    }

    @Test
    void new_noInput_writesACaseOfGuessesAndSaysSo() throws IOException {
        Run run = run("", "new", "mine.yaml");

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("1. Which mower", "The input ends here", "Wrote mine.yaml.")
                .contains("Hours a season: 450 h (common practice, no source; ")
                .endsWith("Next: ./footing assess mine.yaml\n");
        assertThat(CaseFile.read(folder.resolve("mine.yaml")).problems()).isEmpty();
    }

    @Test
    void new_fileWritten_isCheckedAndAnswered() {
        assertThat(run("", "new", "my mowers.yaml").out()).endsWith("assess 'my mowers.yaml'\n");
        String file = folder.resolve("my mowers.yaml").toString();

        assertThat(run("", "check", file).code()).isZero();
        assertThat(run("", "assess", file, "--quick", "--futures", "50").code()).isZero();
    }

    @Test
    void new_everyLineEmpty_asksAllEightQuestions() {
        Run run = run("\n".repeat(60), "new", "mine.yaml");

        assertThat(run.code()).isZero();
        assertThat(run.lines().stream().filter(l -> l.matches("\\d\\. .*\\?"))).hasSize(8);
        assertThat(run.out()).doesNotContain("The input ends here");
    }

    @Test
    void new_answersTyped_areInTheFile() throws IOException {
        run("Big rider: \"Otto\"\n2\norder\n1\nsolid\n", "new", "mine.yaml");
        String text = Files.readString(folder.resolve("mine.yaml"));
        var stated = CaseFile.read(text, "mine.yaml").found().orElseThrow();

        assertThat(stated.machines()).hasSize(2);
        assertThat(stated.machine("m2").kind()).isEqualTo("Big rider: \"Otto\"");
        assertThat(stated.machine("m2").isNew()).isTrue();
        assertThat(stated.assembly(stated.machine("m2").carries().caster()).kind())
                .isEqualTo(footing.core.fleet.Kind.SOLID);
    }

    @Test
    void new_badAnswer_saysWhatFitsAndAsksAgain() {
        Run run = run("rider\nlots\n3\n", "new", "mine.yaml");

        assertThat(run.out()).contains("'lots' is not a number; a whole number from 1 to 50 fits");
        assertThat(run.out().split("How many alike \\[1\\]: ", -1)).hasSize(3);
        assertThat(run.out()).contains("One crew, three mowers");
    }

    @Test
    void new_badAnswerThreeTimes_takesTheGuessAndSaysSo() {
        Run run = run("rider\nlots\nmany\nsome\norder\n", "new", "mine.yaml");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Taken instead, as a guess: 1").contains("One crew, one mower");
        assertThat(run.out()).doesNotContain("Hours on the meter");
    }

    @Test
    void new_answersThatDoNotGoTogether_areSaidAtOnce() {
        String upToTheTrade = "\n".repeat(9) + "1500\n\n\n\n";
        Run run = run(upToTheTrade + "1400\n1800\n", "new", "mine.yaml");

        assertThat(run.out()).contains("the meter already stands at 1500; a trade above 1500 fits");
        assertThat(run.out()).doesNotContain("Traded at, on the meter:");
    }

    @Test
    void new_fileIsThere_isLeftAloneWithCodeTwo() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "precious");
        Run run = run("", "new", "mine.yaml");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("mine.yaml is there already").contains("--force");
        assertThat(file).hasContent("precious");
    }

    @Test
    void new_force_writesOverTheFile() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "precious".repeat(5000));

        assertThat(run("", "new", "mine.yaml", "--force").code()).isZero();
        assertThat(CaseFile.read(file).problems()).isEmpty();
    }

    @Test
    void new_noSuchFolderOrAFolder_isCodeTwoBeforeAnythingIsAsked() {
        assertThat(run("", "new", "nowhere/mine.yaml").code()).isEqualTo(2);
        assertThat(run("", "new", ".").code()).isEqualTo(2);
        assertThat(run("", "new", "nowhere/mine.yaml").out()).isEmpty();
        assertThat(run("", "new").code()).isEqualTo(2);
    }

    @Test
    void new_guessesListed_areThoseOfTheInterview() {
        Run run = run("", "new", "mine.yaml");

        assertThat(run.out()).contains(Interview.guesses(java.util.Map.of()).size() + " answers are guesses:");
    }
}
