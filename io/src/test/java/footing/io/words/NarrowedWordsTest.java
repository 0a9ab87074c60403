package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Narrowing;
import footing.core.answer.Options;
import footing.core.answer.Saving;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Unlearned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an invented log makes surer of the one-machine example. */
class NarrowedWordsTest {
    private static final Path EXAMPLE = Path.of("../cases/one-machine.yaml");
    private static final String HEADS = "date,machine,event,hours,position\n";

    @TempDir
    Path folder;

    private String text;

    @BeforeEach
    void learnFlats() throws IOException {
        text = Files.readString(EXAMPLE)
                .replaceFirst("flatsPerSeason: (\\{[^}]*}|[0-9.]+)", "flatsPerSeason: {learned: flats}")
                .replaceFirst("\nasOf:", "\nrecords: log.csv\nasOf:");
    }

    private Case stated(String rows) throws IOException {
        Files.writeString(folder.resolve("log.csv"), HEADS + rows);
        return CaseFile.read(text, "case", folder).found().orElseThrow();
    }

    private static String log(int flats, int hours) {
        StringBuilder rows = new StringBuilder("2024-03-01,mower,begin,0,\n");
        for (int i = 0; i < flats; i++) {
            rows.append("2025-%02d-%02d,mower,flat,,drive\n".formatted(3 + i / 28, 1 + i % 28));
        }
        return rows + "2026-10-31,mower,reading," + hours + ",\n";
    }

    private static Answer answer(Case stated) {
        return Assessment.answer(
                stated, Options.usual().quickly().withFutures(Narrowing.FUTURES), Workers.one(), Watch.NOBODY);
    }

    private static String told(Answer answer) {
        Case unlearned = Unlearned.of(answer.of()).orElseThrow();
        return NarrowedWords.of(answer, unlearned, Narrowing.of(answer, unlearned, Workers.one()));
    }

    @Test
    void unlearned_caseThatTakesNothingFromRecords_isNone() throws IOException {
        Case plain = CaseFile.read(EXAMPLE).found().orElseThrow();
        assertThat(Unlearned.of(plain)).isEmpty();
    }

    @Test
    void of_nothingWrittenDown_saysItIsNoSurer() throws IOException {
        Answer answer = answer(stated(""));
        Case unlearned = Unlearned.of(answer.of()).orElseThrow();
        Narrowing narrowing = Narrowing.of(answer, unlearned, Workers.one());
        assertThat(narrowing.without()).isEqualTo(narrowing.with());
        assertThat(told(answer)).startsWith("Your records don’t make it surer yet.");
    }

    /** The slow way: the whole case answered without its records, and of it the entry that was chosen. */
    @Test
    void without_onTheFirstFutures_isWhatTheWholeAnswerSaysOfThatChoice() throws IOException {
        Answer answer = answer(stated(log(20, 1350)));
        Case unlearned = Unlearned.of(answer.of()).orElseThrow();
        int chosen = answer.machines().get(0).recommended();
        Saving slowly =
                answer(unlearned).machines().get(0).entries().get(chosen).saving();
        assertThat(Narrowing.without(answer, unlearned, Workers.one())).isEqualTo(slowly);
    }

    @Test
    void of_threeSeasonsWithSomeFlats_tellsBothRangesNarrower() throws IOException {
        Answer answer = answer(stated(log(12, 1350)));
        Case unlearned = Unlearned.of(answer.of()).orElseThrow();
        assertThat(Narrowing.of(answer, unlearned, Workers.one()).share()).isLessThan(0.9);
        assertThat(told(answer))
                .matches("Your records narrow it: four times in five mower has [0-9.]+ to [0-9.]+ flats a season"
                        + " \\(without them [0-9.]+ to [0-9.]+\\) and the change saves [-−0-9,]+ to [0-9,]+"
                        + " \\(without them [-−0-9,]+ to [0-9,]+\\)\\.");
    }

    /** Known better, but so often that the money they cost is as wide a range as before. */
    @Test
    void of_threeSeasonsWithFarMoreFlatsThanUsual_saysTheMoneyIsNoSurer() throws IOException {
        assertThat(told(answer(stated(log(20, 1350)))))
                .startsWith("Your records narrow it: four times in five mower has ")
                .contains(". They leave the money as unsure as it was: the change saves ");
    }
}
