package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import footing.io.form.Problem;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BrokenCasesTest {
    static List<BrokenCase> all() {
        return BrokenCase.all();
    }

    @Test
    void base_unchanged_isAcceptedWithoutWarnings() {
        Reading reading = CaseFile.read(BrokenCase.base(), BrokenCase.FILE);

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("all")
    void read_brokenCase_saysWhatWhereAndWhatWouldFit(BrokenCase broken) {
        Reading reading = CaseFile.read(broken.text(), BrokenCase.FILE);

        String printed = reading.problems().stream().map(p -> p + "\n").collect(Collectors.joining());
        assertThat(printed).isEqualTo(broken.expected());
    }

    @ParameterizedTest
    @MethodSource("all")
    void read_brokenCase_everyProblemHasLineAndAdvice(BrokenCase broken) {
        for (Problem problem : CaseFile.read(broken.text(), BrokenCase.FILE).problems()) {
            assertThat(problem.line()).isBetween(1, (int) broken.text().lines().count() + 1);
            assertThat(problem.advice()).isNotBlank();
        }
    }
}
