package footing.core.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.SmallCase;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a comparison is run: on which futures, in which order, and when it is stopped. */
class DifferenceRunTest {
    @Test
    void between_anyTwo_savingsAreThoseOfAnAnswerOnTheSameFutures() {
        Case b = DifferenceTest.manyChanges();
        Difference d = DifferenceTest.between(DifferenceTest.BASE, b);

        double was = Assessment.answer(DifferenceTest.BASE, DifferenceTest.FEW.quickly(), Workers.one(), Watch.NOBODY)
                .fleet()
                .saving()
                .mean();
        double is = Assessment.answer(b, DifferenceTest.FEW.quickly(), Workers.one(), Watch.NOBODY)
                .fleet()
                .saving()
                .mean();

        assertThat(Objects.requireNonNull(d.recommended()).before()).isCloseTo(was, within(1e-9));
        assertThat(Objects.requireNonNull(d.recommended()).after()).isCloseTo(is, within(1e-9));
    }

    /** The two need different numbers of futures to be sure enough; that they do is a part of its own. */
    @Test
    void between_futuresNotStated_savingsAreThoseOfTheAnswersAlone() {
        Case b = SmallCase.with(DifferenceTest.BASE, Key.BILLING, SmallCase.CREW, 400);
        Options usual = Options.usual().quickly();
        Answer was = Assessment.answer(DifferenceTest.BASE, usual, Workers.one(), Watch.NOBODY);
        Answer is = Assessment.answer(b, usual, Workers.one(), Watch.NOBODY);

        Difference d = Difference.between(DifferenceTest.BASE, b, Options.usual(), Workers.one(), Watch.NOBODY);

        assertThat(d.futuresBefore()).isEqualTo(was.futures()).isNotEqualTo(d.futuresAfter());
        assertThat(d.futuresAfter()).isEqualTo(is.futures());
        Split split = DifferenceTest.recommended(d);
        assertThat(split.before())
                .isCloseTo(was.machines().get(0).choice().saving().mean(), within(1e-9));
        assertThat(split.after())
                .isCloseTo(is.machines().get(0).choice().saving().mean(), within(1e-9));
        assertThat(split.parts()).extracting(Part::kind).containsExactly(Part.Kind.INPUTS, Part.Kind.FUTURES);
        assertThat(DifferenceTest.sum(split)).isEqualTo(split.change());
        assertThat(Math.abs(split.parts().get(1).change())).isLessThan(0.02 * Math.abs(split.change()));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void between_tasksInAnyOrder_isTheSameToTheLastBit(boolean backwards) {
        Workers other = (tasks, task) -> {
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < tasks; i++) {
                order.add(backwards ? 0 : order.size(), i);
            }
            order.forEach(task::accept);
        };

        assertThat(Difference.between(
                        DifferenceTest.BASE, DifferenceTest.manyChanges(), DifferenceTest.FEW, other, Watch.NOBODY))
                .isEqualTo(DifferenceTest.between(DifferenceTest.BASE, DifferenceTest.manyChanges()));
    }

    @Test
    void between_askedToStop_stillKnowsBothAnswers() {
        AtomicInteger told = new AtomicInteger();
        Watch watch = new Watch() {
            @Override
            public void progress(String stage, double share) {
                assertThat(share).isBetween(0.0, 1.0);
                told.incrementAndGet();
            }

            @Override
            public boolean stopped() {
                return told.get() > 3;
            }
        };

        Difference d = Difference.between(
                DifferenceTest.BASE, DifferenceTest.manyChanges(), DifferenceTest.FEW, Workers.one(), watch);

        assertThat(d.complete()).isFalse();
        assertThat(d.recommended()).isNull();
        MachineDifference m = d.machines().get(0);
        assertThat(m.recommended()).isNull();
        assertThat(Objects.requireNonNull(m.after()).saving().mean()).isNotNaN();
        assertThat(told.get()).isEqualTo(4);
    }
}
