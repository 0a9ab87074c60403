package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.edit.CaseEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputsTest {
    private static Case read(String text) {
        return CaseFile.read(text, "x").found().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            crews.estates.wage | 24 | 21.40 to 24
            crews.estates.burden | 17.2 % | 17 % to 17.2 %
            crews.estates.makeUpToday | 0.501 h | 30 min to 30.06 min
            crews.estates.overtimePremium | 50 % | 50 %, now yours (before: a guess
            crews.estates.fixes[1].delay | 60 / 100 / 190 min | 70 min to 3.3 h, now 60 min to 3.2 h
            """)
    void changed_oneValue_tellsWhatDiffers(String path, String typed, String told) throws IOException {
        String text = Files.readString(Path.of("../cases/quillbrook.yaml"));
        String edited = CaseEdit.set(text, path, typed).text();

        assertThat(Inputs.changed(read(text), read(edited), path)).contains(": " + told);
    }
}
