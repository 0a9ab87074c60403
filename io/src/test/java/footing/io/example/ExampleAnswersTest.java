package footing.io.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Explain;
import footing.core.answer.Explanation;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases that come with the program, answered on few futures. */
class ExampleAnswersTest {
    private static final int FUTURES = 400;
    private static final Options QUICK = Options.usual().withFutures(FUTURES).quickly();

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../cases"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private static Case read(Path file) throws IOException {
        if (CaseFile.read(file) instanceof Reading.Accepted accepted) {
            return accepted.stated();
        }
        throw new AssertionError(file + " was not accepted");
    }

    private static Answer answer(Case c) {
        return Assessment.answer(c, QUICK, Workers.one(), Watch.NOBODY);
    }

    @ParameterizedTest
    @MethodSource("files")
    void answer_example_addsUp(Path file) throws IOException {
        Answer answer = answer(read(file));
        double mean = 0;
        double start = 0;
        for (MachineAnswer m : answer.machines()) {
            mean += m.choice().saving().mean();
            start += m.choice().startCost();
            assertThat(m.carried().saving().mean()).isZero();
            assertThat(m.carried().cost().mean()).isPositive();
            for (EntryAnswer e : m.entries()) {
                assertThat(e.parts().cost()).isCloseTo(e.cost().mean(), within(1e-8));
                assertThat(m.carried().cost().mean() - e.cost().mean())
                        .isCloseTo(e.saving().mean(), within(1e-8));
                assertThat(e.cost().p10()).isLessThanOrEqualTo(e.cost().p50());
                assertThat(e.cost().p50()).isLessThanOrEqualTo(e.cost().p90());
                assertThat(e.cost().mean())
                        .isGreaterThanOrEqualTo(m.choice().cost().mean() - 0.01);
            }
        }
        assertThat(answer.fleet().saving().mean()).isCloseTo(mean, within(1e-8));
        assertThat(answer.fleet().startCost()).isCloseTo(start, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("files")
    void explain_exampleChoice_comesToTheAnswer(Path file) throws IOException {
        Case c = read(file);
        for (MachineAnswer m : answer(c).machines()) {
            EntryAnswer e = m.choice();
            double[] answered = {
                e.saving().mean(), e.cost().mean(), e.startCost(), e.parts().purchase()
            };
            List<String> figures = List.of("saving", "cost", "startCost", "purchase");
            for (int i = 0; i < figures.size(); i++) {
                Explanation tree =
                        Explain.figure(c, m.id(), e.entry().id(), e.entry().when(), figures.get(i), 1, FUTURES);
                assertThat(tree.value()).as(m.id() + " " + figures.get(i)).isCloseTo(answered[i], within(0.005));
            }
        }
    }
}
