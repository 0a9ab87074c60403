package footing.core.answer;

import static footing.core.answer.PlantedCosts.split;
import static footing.core.answer.PlantedCosts.steady;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.future.MachineFutures;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** When there are futures enough; numbers derived from the rule. */
class PrecisionTest {
    private static final int N = 5000;

    private static double needed(double start, double[] carried, double[] other) {
        return Precision.needed(PlantedCosts.of(new double[] {0, start}, new double[][] {carried, other}), 0.8);
    }

    @Test
    void needed_savingKnown_isNoMoreThanThereAre() {
        assertThat(needed(100, steady(N, 1000), split(N, 900, 0.99, 1))).isZero();
    }

    /** Wanted is 0.5 % of 1,000; the standard error goes with 1/√n, so n grows with the square of error over 5. */
    @Test
    void needed_savingUnsure_growsWithTheSquareOfTheError() {
        double[] other = split(N, 900, 0.9, 200);
        MachineFutures futures = PlantedCosts.of(new double[] {0, 100}, new double[][] {steady(N, 1000), other});
        double error = new Comparison(futures, 0.8).step(0, 1).standardError();
        assertThat(error).isGreaterThan(5);
        assertThat(Precision.needed(futures, 0.8)).isCloseTo(N * error * error / 25 * 1.05, within(1e-6));
    }

    /** A dear start allows 1 % of it: here 10, above the error. */
    @Test
    void needed_dearStart_allowsMore() {
        double[] other = split(N, 900, 0.9, 200);
        assertThat(needed(1000, steady(N, 1000), other)).isZero();
    }

    /** p(1 − p)/0.005² within three points of 50 % and of the threshold. */
    @Test
    void needed_chanceNearATurn_isThatOfItsStandardError() {
        assertThat(needed(100, steady(N, 1000), split(N, 999, 0.52, 5)))
                .isCloseTo(0.52 * 0.48 / 0.000025, within(1e-6));
        assertThat(needed(100, steady(N, 1000), split(N, 999, 0.78, 5)))
                .isCloseTo(0.78 * 0.22 / 0.000025, within(1e-6));
        assertThat(needed(100, steady(N, 1000), split(N, 999, 0.65, 5))).isZero();
    }

    @Test
    void answer_noFuturesAskedFor_runsUntilTheRuleIsMet() {
        Case c = SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM), List.of());
        Answer answer = Assessment.answer(c, Options.usual().quickly(), Workers.one(), Watch.NOBODY);
        MachineFutures run = new MachineFutures(answer.machine(SmallCase.RIDER).machine(), 1).runAll(answer.futures());
        assertThat(answer.futures()).isBetween(4000, 200_000);
        assertThat(Precision.needed(run, 0.8)).isLessThanOrEqualTo(answer.futures());
        assertThat(answer.reached()).startsWith("Enough ways were run");
        assertThat(answer.complete()).isTrue();
    }

    @Test
    void answer_tooFewAskedFor_saysHowManyItWouldTake() {
        Case c = SmallCase.with(SmallCase.build(), Key.LIFE_UNSURE, "firm-drive", 0.6);
        Answer answer = Assessment.answer(c, Options.usual().withFutures(50).quickly(), Workers.one(), Watch.NOBODY);
        assertThat(answer.futures()).isEqualTo(50);
        assertThat(answer.reached()).contains("50 were run");
    }

    /** A watch that says stop from the given time it is asked. */
    private static Watch stopping(int from) {
        AtomicInteger asked = new AtomicInteger();
        return new Watch() {
            @Override
            public void progress(String stage, double share) {
                assertThat(share).isBetween(0.0, 1.0);
            }

            @Override
            public boolean stopped() {
                return asked.incrementAndGet() >= from;
            }
        };
    }

    @Test
    void answer_stoppedAtOnce_stillHasAFirstRound() {
        Answer answer = Assessment.answer(SmallCase.build(), Options.usual(), Workers.one(), stopping(1));
        assertThat(answer.complete()).isFalse();
        assertThat(answer.futures()).isEqualTo(2048);
        assertThat(answer.machines()).hasSize(1);
    }

    @Test
    void answer_stoppedLater_isAValidAnswerOfWhatWasRun() {
        for (int from : new int[] {2, 4, 12}) {
            Answer answer = Assessment.answer(
                    SmallCase.build(), Options.usual().withFutures(6000), Workers.one(), stopping(from));
            assertThat(answer.complete()).isFalse();
            assertThat(answer.futures()).isBetween(2048, 6000);
            MachineAnswer m = answer.machine(SmallCase.RIDER);
            assertThat(m.drivers()).isNull();
            Answer same = Assessment.answer(
                    SmallCase.build(),
                    Options.usual().withFutures(answer.futures()).quickly(),
                    Workers.one(),
                    Watch.NOBODY);
            assertThat(m).isEqualTo(same.machine(SmallCase.RIDER));
        }
    }

    /** So few that no regression is possible: the answer must still come. */
    @Test
    void answer_fewFutures_stillAnswersInFull() {
        Case c = SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM), List.of());
        for (int futures : new int[] {2, 3, 7, 20}) {
            Answer answer = Assessment.answer(c, Options.usual().withFutures(futures), Workers.one(), Watch.NOBODY);
            assertThat(answer.complete()).isTrue();
            MachineAnswer.FindOutFirst found = answer.machine(SmallCase.RIDER).findOutFirst();
            assertThat(found).isNotNull();
        }
    }
}
