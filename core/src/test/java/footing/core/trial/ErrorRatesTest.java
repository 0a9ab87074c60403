package footing.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often a verdict is wrong, over many drawn trials; bounds are the promise and four standard errors. */
class ErrorRatesTest {
    private static final int TRIALS = 10_000;
    private static final double WITHIN = 0.05 + 4 * Math.sqrt(0.05 * 0.95 / TRIALS);

    @ParameterizedTest
    @CsvSource({"3, 0.05", "6, 0.10", "6, 0.30", "15, 0.10"})
    void verdict_noDifference_isMoreInAtMostOneOfTwenty(int pairs, double spread) {
        Drawn drawn = new Drawn(pairs);
        assertThat(share(drawn, pairs, 100, spread, Verdict.A_MORE) + share(drawn, pairs, 100, spread, Verdict.B_MORE))
                .isLessThanOrEqualTo(WITHIN);
    }

    @ParameterizedTest
    @CsvSource({"3, 0.05", "6, 0.02", "6, 0.10", "15, 0.10", "60, 0.10"})
    void verdict_differenceAtTheMargin_isAlikeInAtMostOneOfTwenty(int pairs, double spread) {
        assertThat(share(new Drawn(7 + pairs), pairs, 95, spread, Verdict.ALIKE))
                .isLessThanOrEqualTo(WITHIN);
    }

    /** Opposed pulls are decided by the sign test, which is exact: no standard errors beyond those of the drawing. */
    @ParameterizedTest
    @CsvSource({"5, 0.3", "10, 0", "12, 0.2", "30, 0.1"})
    void verdict_opposedPullsOfEquals_haveAWinnerInAtMostOneOfTwenty(int bouts, double even) {
        Random random = new Random(bouts);
        int told = 0;
        for (int i = 0; i < TRIALS; i++) {
            List<Bout> pulls = new ArrayList<>();
            for (int j = 0; j < bouts; j++) {
                Side winner = random.nextBoolean() ? Side.A : Side.B;
                pulls.add(new Bout(j + 1, random.nextDouble() < even ? null : winner, ""));
            }
            Question question = new Question(TrialKind.PULL, Goal.MORE, Margin.USUAL, List.of());
            Trial trial = new Trial(question, Drawn.thing("air"), Drawn.thing("airless"), List.of(), pulls);
            told += TrialResult.of(trial).verdict() == Verdict.NOT_ENOUGH ? 0 : 1;
        }
        assertThat(told / (double) TRIALS).isLessThanOrEqualTo(WITHIN);
    }

    /** A margin in the unit of the values, and a difference of exactly that. */
    @ParameterizedTest
    @CsvSource({"6, 10", "15, 10", "40, 4"})
    void verdict_differenceAtAStatedMargin_isAlikeInAtMostOneOfTwenty(int pairs, double margin) {
        Drawn drawn = new Drawn(11 + pairs);
        Question question = new Question(TrialKind.PULL, Goal.MORE, new Margin(margin, false), List.of());
        int alike = 0;
        for (int i = 0; i < TRIALS; i++) {
            List<Run> runs = drawn.runs(pairs, 100 - margin, 100, 8);
            Trial trial = new Trial(question, Drawn.thing("air"), Drawn.thing("airless"), runs, List.of());
            alike += TrialResult.of(trial).verdict() == Verdict.ALIKE ? 1 : 0;
        }
        assertThat(alike / (double) TRIALS).isLessThanOrEqualTo(WITHIN);
    }

    @Test
    void verdict_asManyPairsAsPlanned_tellsFourTimesInFive() {
        PlanAdvice advice = PlanAdvice.fromRuns(0.10, 0.08);
        double alike = share(new Drawn(3), advice.toCallAlike(), 100, 0.08, Verdict.ALIKE);
        assertThat(alike).isBetween(0.80 - 0.02, 0.90);
    }

    /** Both average 100 together, so that 95 of B is a margin of ten percent below 105 of A. */
    private static double share(Drawn drawn, int pairs, double meanB, double spread, Verdict verdict) {
        int count = 0;
        for (int i = 0; i < TRIALS; i++) {
            var runs = drawn.runs(pairs, 200 - meanB, meanB, 100 * spread);
            count += TrialResult.of(Drawn.trial(TrialKind.PULL, runs)).verdict() == verdict ? 1 : 0;
        }
        return count / (double) TRIALS;
    }
}
