package footing.core.answer;

import static footing.core.answer.PlantedCosts.split;
import static footing.core.answer.PlantedCosts.steady;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of choice on costs written by hand; every expectation is derived from them. */
class ComparisonTest {
    private static final int N = 10_000;

    private static Comparison comparison(double[] start, double[]... costs) {
        return new Comparison(PlantedCosts.of(start, costs), 0.8);
    }

    private static double[] start(double... costs) {
        return costs;
    }

    @Test
    void recommended_costsApart_isTheCheapest() {
        assertThat(comparison(start(0, 100, 50), steady(N, 1000), steady(N, 900), steady(N, 950))
                        .recommended())
                .isEqualTo(1);
    }

    @Test
    void recommended_tieWithinACent_goesToTheCarriedOne() {
        assertThat(comparison(start(0, 100), steady(N, 1000), steady(N, 999.9901))
                        .recommended())
                .isZero();
        assertThat(comparison(start(0, 100), steady(N, 1000), steady(N, 999.9899))
                        .recommended())
                .isEqualTo(1);
    }

    @Test
    void recommended_tieOfOthers_goesToTheSmallerStart() {
        Comparison c = comparison(start(0, 200, 100), steady(N, 1000), steady(N, 899.999), steady(N, 900));
        assertThat(c.recommended()).isEqualTo(2);
    }

    @Test
    void step_pairedCosts_comparesFutureByFuture() {
        double[] carried = split(N, 1000, 0.3, 50);
        double[] other = new double[N];
        for (int f = 0; f < N; f++) {
            other[f] = carried[f] - 10;
        }
        Comparison.Step step = comparison(start(0, 100), carried, other).step(0, 1);
        assertThat(step.mean()).isCloseTo(10, within(1e-9));
        assertThat(step.standardError()).isCloseTo(0, within(1e-9));
        assertThat(step.chance()).isEqualTo(1);
    }

    /** 1 % of 1,000 is 10: a saving must be above it. */
    @ParameterizedTest
    @CsvSource({"9.9, CLOSE", "10.1, PAYS"})
    void verdict_sureSaving_mustBeNoticeable(double saving, Verdict verdict) {
        assertThat(comparison(start(0, 100), steady(N, 1000), steady(N, 1000 - saving))
                        .verdict())
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"0.79, CLOSE", "0.80, PAYS", "0.95, PAYS"})
    void verdict_largeSaving_mustBeLikely(double chance, Verdict verdict) {
        assertThat(comparison(start(0, 100), steady(N, 1000), split(N, 900, chance, 150))
                        .verdict())
                .isEqualTo(verdict);
    }

    /** In 100 futures a saving of 30 with a deviation of about 200 has a standard error of 20. */
    @Test
    void verdict_twoStandardErrors_areNotReached() {
        double[] noisy = split(100, 970, 0.9, 70);
        Comparison c = comparison(start(0, 100), steady(100, 1000), noisy);
        Comparison.Step step = c.step(0, 1);
        assertThat(step.mean()).isBetween(10.0, 2 * step.standardError());
        assertThat(step.chance()).isEqualTo(0.9);
        assertThat(c.verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void verdict_nextCheaperStartNearlyAsGood_isClose() {
        double[][] costs = {steady(N, 1000), steady(N, 805), steady(N, 800)};
        Comparison c = comparison(start(0, 10, 500), costs);
        assertThat(c.recommended()).isEqualTo(2);
        assertThat(c.verdict()).isEqualTo(Verdict.CLOSE);
        Comparison dearFirst = comparison(start(0, 500, 10), costs);
        assertThat(dearFirst.recommended()).isEqualTo(2);
        assertThat(dearFirst.verdict()).isEqualTo(Verdict.PAYS);
    }

    @ParameterizedTest
    @CsvSource({"1009.9, CLOSE", "1010.1, KEEP", "1000, CLOSE"})
    void verdict_carriedCheapest_isKeptIfEveryOtherIsClearlyDearer(double other, Verdict verdict) {
        Comparison c = comparison(start(0, 100, 50), steady(N, 1000), steady(N, 1500), steady(N, other));
        assertThat(c.recommended()).isZero();
        assertThat(c.verdict()).isEqualTo(verdict);
    }

    @Test
    void overNext_severalCheaperStarts_isAgainstTheBestOfThem() {
        Comparison c = comparison(
                start(0, 100, 300, 300, 500),
                steady(N, 1000),
                steady(N, 950),
                steady(N, 900),
                steady(N, 700),
                steady(N, 650));
        assertThat(c.overNext(0)).isNull();
        assertThat(over(c, 1)).isEqualTo(new Comparison.Step(0, 50, 0, 1));
        assertThat(over(c, 2)).isEqualTo(new Comparison.Step(1, 50, 0, 1));
        assertThat(over(c, 3)).isEqualTo(new Comparison.Step(1, 250, 0, 1));
        assertThat(over(c, 4)).isEqualTo(new Comparison.Step(3, 50, 0, 1));
    }

    private static Comparison.Step over(Comparison c, int e) {
        Comparison.Step step = c.overNext(e);
        if (step == null) {
            throw new AssertionError("nothing below entry " + e);
        }
        return step;
    }

    @Test
    void overNext_startBelowTheCarriedOne_isStillAgainstTheCarriedOne() {
        Comparison c = comparison(start(0, -40), steady(N, 1000), steady(N, 980));
        assertThat(over(c, 1)).isEqualTo(new Comparison.Step(0, 20, 0, 1));
    }

    @Test
    void ladder_manyEntries_holdsOnlyStepsThatGetCheaper() {
        Comparison c = comparison(
                start(0, 500, 100, 200, 300, 100),
                steady(N, 1000),
                steady(N, 700),
                steady(N, 900),
                steady(N, 950),
                steady(N, 800),
                steady(N, 920));
        assertThat(rungs(c)).containsExactly("entry-2 100 100", "entry-4 200 100", "entry-1 200 100");
    }

    @Test
    void ladder_nothingCheaper_isEmpty() {
        assertThat(comparison(start(0, 100), steady(N, 1000), steady(N, 1000)).ladder())
                .isEmpty();
    }

    private static List<String> rungs(Comparison c) {
        return c.ladder().stream()
                .map(r -> r.entry().id() + " " + Math.round(r.extraStart()) + " " + Math.round(r.extraSaving()))
                .toList();
    }
}
