package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class AnswersTest {
    private static Case one;
    private static Case fleet;

    private final Answers answers = new Answers();

    @BeforeAll
    static void readExamples() throws IOException {
        one = CaseFile.read(Path.of("../cases/one-machine.yaml")).found().orElseThrow();
        fleet = CaseFile.read(Path.of("../cases/quillbrook.yaml")).found().orElseThrow();
    }

    @AfterEach
    void close() {
        answers.close();
    }

    private static Case billing(double value) {
        return one.with(Input.of(Key.BILLING, "me"), Spread.of(value));
    }

    private Told whole(String id, Case stated, String machine) throws InterruptedException {
        Told told = answers.now(id, stated, machine);
        while (told.working()) {
            Thread.sleep(20);
            told = answers.now(id, stated, machine);
        }
        return told;
    }

    @Test
    void now_firstTime_isTheAnswerFromFewFutures() {
        Told told = answers.now("a", one, "mower");
        Options few = new Options(OptionalInt.of(Answers.FIRST), 1, 0.8, true, Optional.of("mower"));
        Answer expected = Assessment.answer(one, few, Workers.one(), Watch.NOBODY);
        assertThat(told.whole()).isFalse();
        assertThat(told.answer().machine("mower").choice().cost())
                .isEqualTo(expected.machine("mower").choice().cost());
    }

    @Test
    void now_workDone_isTheWholeAnswerToTheLastBit() throws InterruptedException {
        Told told = whole("a", one, "mower");
        Answer expected = Assessment.answer(one, Options.usual(), Workers.one(), Watch.NOBODY);
        assertThat(told.whole()).isTrue();
        assertThat(told.answer().futures()).isEqualTo(expected.futures());
        MachineAnswer mower = told.answer().machine("mower");
        assertThat(mower.entries()).isEqualTo(expected.machine("mower").entries());
        assertThat(mower.drivers()).isEqualTo(expected.machine("mower").drivers());
        assertThat(mower.findOutFirst()).isEqualTo(expected.machine("mower").findOutFirst());
    }

    @Test
    void now_sameTextAgain_isKept() throws InterruptedException {
        Told before = whole("a", one, "mower");
        whole("a", billing(90), "mower");
        Told again = answers.now("a", billing(75), "mower");
        assertThat(again.answer().machine("mower")).isSameAs(before.answer().machine("mower"));
        assertThat(again.working()).isFalse();
    }

    @Test
    void now_newerText_stopsTheOlder() {
        Told older = answers.now("a", fleet, null);
        Told newer = answers.now("a", one, null);
        assertThat(older.working()).isTrue();
        assertThat(newer.answer().of()).isEqualTo(one);
        Refinement stopped = new Refinement(fleet);
        Watch first = stopped.begin(null);
        stopped.stop();
        assertThat(first.stopped()).isTrue();
        assertThat(stopped.begin(null).stopped()).isFalse();
        assertThat(first.stopped()).isTrue();
    }

    @Test
    void stop_workUnderWay_leavesWhatIsKnown() {
        answers.now("a", fleet, null);
        answers.stop("a");
        Told stopped = answers.now("a", fleet, null);
        assertThat(stopped.working()).isFalse();
        assertThat(stopped.whole()).isFalse();
        assertThat(stopped.answer().machines()).hasSize(9);
        answers.resume("a");
        assertThat(answers.now("a", fleet, null).working()).isTrue();
        answers.stop("a");
    }
}
