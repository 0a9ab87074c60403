package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.money.ReferenceValue;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SurvivalCurveTest {
    private static final double Z95 = new NormalDistribution().inverseCumulativeProbability(0.975);

    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(SurvivalCurveTest.class, "survival.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void of_referenceData_givesTheReferenceCurve(ReferenceValue reference) {
        SurvivalCurve curve = SurvivalCurve.of(DataSet.lives(reference.inputs().get(0)));
        if (reference.function().equals("median")) {
            reference.check(curve.median().orElseThrow());
            return;
        }
        if (reference.function().equals("medianLow95")) {
            reference.check(curve.medianLimits(0.95).orElseThrow().low());
            return;
        }
        SurvivalCurve.Step step = curve.steps().get(reference.whole(1));
        reference.check(
                switch (reference.function()) {
                    case "age" -> step.age();
                    case "atRisk" -> step.atRisk();
                    case "wornOut" -> step.wornOut();
                    case "survival" -> step.survival();
                    case "error" -> step.error();
                    case "plainLow95" -> Math.max(step.survival() - Z95 * step.error(), 0);
                    case "plainHigh95" -> Math.min(step.survival() + Z95 * step.error(), 1);
                    case "hazard" -> step.hazard();
                    case "low95" -> step.limits(0.95).low();
                    case "high95" -> step.limits(0.95).high();
                    default -> throw new AssertionError(reference.function());
                });
    }

    @Test
    void of_entriesForgotten_claimsMoreSurvivors() {
        double truth =
                SurvivalCurve.of(DataSet.lives("truncated")).steps().get(1).survival();
        double wrong = SurvivalCurve.of(DataSet.lives("truncated-forgotten"))
                .steps()
                .get(1)
                .survival();
        assertThat(wrong - truth).isGreaterThan(0.03);
    }

    /** R 4.2 survival prints no upper limit of the median of the 6-MP arm. */
    @Test
    void medianLimits_upperNeverDownToAHalf_haveNoUpperEnd() {
        assertThat(SurvivalCurve.of(DataSet.lives("leukemia"))
                        .medianLimits(0.95)
                        .orElseThrow()
                        .high())
                .isInfinite();
        assertThat(SurvivalCurve.of(List.of(new Life(0, 300, false))).medianLimits(0.95))
                .isEmpty();
    }

    @Test
    void of_noneWornOut_hasNoStepAndNoMedian() {
        SurvivalCurve curve = SurvivalCurve.of(List.of(new Life(0, 300, false)));
        assertThat(curve.steps()).isEmpty();
        assertThat(curve.median()).isEmpty();
    }

    @Test
    void limits_allGone_sayNothing() {
        SurvivalCurve curve = SurvivalCurve.of(List.of(new Life(0, 300, true)));
        assertThat(curve.steps().get(0).survival()).isZero();
        assertThat(curve.steps().get(0).limits(0.8)).isEqualTo(new Limits(0, 1));
    }
}
