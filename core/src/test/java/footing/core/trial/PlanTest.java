package footing.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlanTest {
    @Test
    void plan_anySeed_isBalancedAndPairsNeighborsOnFreshLanes() {
        for (long seed = 0; seed < 50; seed++) {
            RunPlan plan = RunPlan.of(6, List.of("dry", "wet"), seed);
            assertThat(plan.runs()).hasSize(24);
            List<Run> runs = plan.runs().stream()
                    .map(p -> new Run(p.order(), p.side(), p.lane(), p.surface(), "" + p.lane(), Conditions.NONE))
                    .toList();
            Pairing pairing = Pairing.of(runs);
            assertThat(pairing.apart()).isZero();
            assertThat(pairing.left()).isEmpty();
            assertThat(pairing.pairs()).filteredOn(p -> p.first() == Side.A).hasSize(6);
            assertThat(TrialResult.of(Drawn.trial(TrialKind.PULL, runs)).caveats())
                    .doesNotHaveAnyElementsOfTypes(Caveat.UsedLane.class);
        }
    }

    @Test
    void plan_sameSeed_isTheSameAndOthersDiffer() {
        RunPlan plan = RunPlan.of(10, List.of(""), 1);
        assertThat(RunPlan.of(10, List.of(""), 1)).isEqualTo(plan);
        assertThat(IntStream.range(2, 20)
                        .mapToObj(s -> RunPlan.of(10, List.of(""), s))
                        .distinct()
                        .count())
                .isGreaterThan(8);
    }

    @Test
    void plan_manySeeds_startWithEitherSideHalfTheTime() {
        long a = IntStream.range(0, 2000)
                .filter(s -> RunPlan.of(1, List.of(""), s).runs().get(0).side() == Side.A)
                .count();
        assertThat(a).isBetween(1000L - 90, 1000L + 90);
    }

    @Test
    void plan_tooManyRuns_isRefused() {
        assertThatThrownBy(() -> RunPlan.of(3000, List.of(""), 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RunPlan.of(0, List.of(""), 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void advice_halfTheMargin_needsAboutFourTimesThePairs() {
        PlanAdvice wide = PlanAdvice.fromRuns(0.10, 0.10);
        PlanAdvice narrow = PlanAdvice.fromRuns(0.05, 0.10);
        assertThat(narrow.pairs() / (double) wide.pairs()).isBetween(3.5, 4.1);
        assertThat(PlanAdvice.fromRuns(0.5, 0.01).pairs()).isEqualTo(5);
    }

    @Test
    void power_noEffect_isTheLevel() {
        assertThat(Power.ofDifference(0, 6, 0.05)).isCloseTo(0.05, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(Power.ofAlike(1, 1, 40, 0.05)).isCloseTo(0.05, org.assertj.core.data.Offset.offset(1e-6));
        assertThatThrownBy(() -> Power.ofDifference(1, Double.NaN, 0.05)).isInstanceOf(IllegalArgumentException.class);
    }
}
