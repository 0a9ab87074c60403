package footing.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TrialResultTest {
    @Test
    void verdict_clearDifference_isMoreAndBetterByGoal() {
        List<Run> runs = runs("", 100, 80, 101, 79, 99, 82, 100, 81);
        assertThat(TrialResult.of(Drawn.trial(TrialKind.PULL, runs)).better()).contains(Side.A);
        assertThat(TrialResult.of(Drawn.trial(TrialKind.STOP, runs)).better()).contains(Side.B);
        TrialResult print = TrialResult.of(Drawn.trial(TrialKind.PRINT, runs));
        assertThat(print.verdict()).isEqualTo(Verdict.A_MORE);
        assertThat(print.better()).isEmpty();
    }

    @Test
    void verdict_smallButClearDifference_isAlike() {
        List<Run> runs = runs("", 101, 100, 102, 101.1, 100, 98.9, 101, 100, 100.5, 99.6);
        PairedResult result = together(runs);
        assertThat(there(result.test()).p()).isLessThan(0.01);
        assertThat(result.verdict()).isEqualTo(Verdict.ALIKE);
        assertThat(result.furtherPairs()).isZero();
    }

    @Test
    void verdict_twoPairs_neverTells() {
        PairedResult result = together(runs("", 100, 50, 100.1, 50));
        assertThat(result.verdict()).isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(result.furtherPairs()).isPositive();
    }

    @Test
    void verdict_noPairOrOne_asksForAsManyAsTheUsualSpreadNeeds() {
        PairedResult none = together(List.of());
        PairedResult one = together(runs("", 100, 99));
        assertThat(none.furtherPairs()).isEqualTo(one.furtherPairs() + 1);
        assertThat(one.furtherPairs() + 1)
                .isEqualTo(PlanAdvice.fromRuns(0.10, 0.10).toCallAlike());
    }

    @Test
    void verdict_coarseInstrument_asksForSixPairs() {
        assertThat(together(runs("", 10, 8, 10, 8, 10, 8)).verdict()).isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(together(runs("", 10, 8, 10, 8, 10, 8)).furtherPairs()).isEqualTo(3);
        assertThat(together(runs("", 10, 8, 10, 8, 10, 8, 10, 8, 10, 8, 10, 8)).verdict())
                .isEqualTo(Verdict.A_MORE);
        assertThat(together(runs("", 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8)).verdict())
                .isEqualTo(Verdict.ALIKE);
    }

    @Test
    void equivalence_shareOfTheMean_agreesWithAnAbsoluteMarginWhereTheMeanIsFixed() {
        List<Pair> pairs =
                Pairing.of(runs("", 101, 99, 98, 102, 103, 97, 100.5, 99.5)).pairs();
        Equivalence share = Equivalence.of(pairs, new Margin(0.05, true));
        Equivalence absolute = Equivalence.of(pairs, new Margin(5, false));
        assertThat(share.p()).isEqualTo(absolute.p());
    }

    @Test
    void result_scaledAndSwapped_staysTheSame() {
        List<Run> runs = new Drawn(5).runs(7, 100, 97, 4);
        PairedResult one = together(runs);
        PairedResult scaled = together(runs.stream()
                .map(r -> Drawn.run(r.order(), r.side(), r.value() * 1000, ""))
                .toList());
        PairedResult swapped = together(runs.stream()
                .map(r -> Drawn.run(r.order(), r.side().other(), r.value(), ""))
                .toList());
        assertThat(scaled.verdict()).isEqualTo(one.verdict());
        assertThat(scaled.furtherPairs()).isEqualTo(one.furtherPairs());
        assertThat(there(swapped.test()).t()).isEqualTo(-there(one.test()).t());
        assertThat(there(swapped.equivalence()).p())
                .isEqualTo(there(one.equivalence()).p());
    }

    @Test
    void bySurface_twoSurfaces_judgesEachAndSaysThatTheyDisagree() {
        List<Run> runs = new ArrayList<>(runs("dry", 100, 80, 101, 79, 99, 82, 100, 81));
        for (Run r : runs("wet", 60, 79, 61, 81, 59, 80, 60, 82)) {
            runs.add(Drawn.run(r.order() + 100, r.side(), r.value(), "wet"));
        }
        TrialResult result = TrialResult.of(Drawn.trial(TrialKind.PULL, runs));
        assertThat(result.bySurface().keySet()).containsExactly("dry", "wet");
        assertThat(there(result.bySurface().get("dry")).verdict()).isEqualTo(Verdict.A_MORE);
        assertThat(there(result.bySurface().get("wet")).verdict()).isEqualTo(Verdict.B_MORE);
        assertThat(result.verdict()).isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(result.caveats()).hasAtLeastOneElementOfType(Caveat.SurfacesDisagree.class);
    }

    @Test
    void caveats_lessPressure_namesConditionAndMeans() {
        double psi = 6894.757;
        List<Run> runs = new ArrayList<>();
        for (Run r : new Drawn(1).runs(4, 10, 10, 1)) {
            double pressure = (r.side() == Side.A ? 14 : 10) * psi;
            String operator = r.side() == Side.A ? "Jo" : "Sam";
            Conditions at = new Conditions(Map.of(Condition.PRESSURE, pressure), Map.of(Condition.OPERATOR, operator));
            runs.add(new Run(r.order(), r.side(), r.value(), "", "7", at));
        }
        assertThat(TrialResult.of(Drawn.trial(TrialKind.PULL, runs)).caveats())
                .contains(
                        new Caveat.Uneven(Condition.PRESSURE, 14 * psi, 10 * psi),
                        new Caveat.OneSided(Condition.OPERATOR, "Jo", "Sam"),
                        new Caveat.UsedLane("7", 8));
    }

    @Test
    void caveats_conditionsOfASide_areOverriddenByThoseOfARun() {
        Conditions ten = new Conditions(Map.of(Condition.PRESSURE, 10e4), Map.of());
        Conditions six = new Conditions(Map.of(Condition.PRESSURE, 6e4), Map.of());
        Question question = new Question(TrialKind.PULL, Goal.MORE, Margin.USUAL, List.of());
        List<Run> runs =
                List.of(new Run(1, Side.A, 9, "", null, Conditions.NONE), new Run(2, Side.B, 9, "", null, ten));
        Trial same = new Trial(question, new Contender("a", ten), new Contender("b", six), runs, List.of());
        assertThat(TrialResult.of(same).caveats()).isEmpty();
    }

    @Test
    void caveats_orderOfRuns_namesFirstApartAndLeft() {
        List<Run> alwaysA = runs("", 1, 2, 2, 3, 4, 5);
        assertThat(TrialResult.of(Drawn.trial(TrialKind.PULL, alwaysA)).caveats())
                .containsExactly(new Caveat.SameOrder(Side.A));
        List<Run> batches = List.of(
                Drawn.run(1, Side.A, 1, ""),
                Drawn.run(2, Side.A, 1.1, ""),
                Drawn.run(3, Side.B, 2, ""),
                Drawn.run(4, Side.B, 2.3, ""),
                Drawn.run(5, Side.B, 2.2, ""));
        assertThat(TrialResult.of(Drawn.trial(TrialKind.PULL, batches)).caveats())
                .containsExactly(new Caveat.Apart(2), new Caveat.Unpaired(1));
    }

    @Test
    void bouts_sixOfSix_showTheWinnerAndAskForWhatWasNotNoted() {
        TrialResult six = bouts(6, 0, 1);
        assertThat(six.verdict()).isEqualTo(Verdict.A_MORE);
        assertThat(six.better()).contains(Side.A);
        assertThat(six.caveats()).contains(new Caveat.NotNoted(Condition.MASS, null));
        TrialResult three = bouts(2, 1, 0);
        assertThat(three.verdict()).isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(there(three.bouts()).furtherBouts()).isBetween(20, 40);
    }

    private static TrialResult bouts(int a, int b, int even) {
        List<Bout> bouts = new ArrayList<>();
        for (int i = 0; i < a + b + even; i++) {
            bouts.add(new Bout(i, i < a ? Side.A : i < a + b ? Side.B : null, ""));
        }
        Question question = new Question(TrialKind.PULL, Goal.MORE, Margin.USUAL, List.of());
        return TrialResult.of(new Trial(question, Drawn.thing("air"), Drawn.thing("foam"), List.of(), bouts));
    }

    private static PairedResult together(List<Run> runs) {
        return there(TrialResult.of(Drawn.trial(TrialKind.PULL, runs)).together());
    }

    private static <T> T there(@Nullable T thing) {
        return Objects.requireNonNull(thing);
    }

    /** A and B in turn. */
    private static List<Run> runs(String surface, double... values) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            runs.add(Drawn.run(i + 1, i % 2 == 0 ? Side.A : Side.B, values[i], surface));
        }
        return runs;
    }
}
