package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Draws;
import footing.core.chance.Sample;
import footing.core.money.UnitNormalLoss;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Value of information by regression against closed forms. The two-option normal-linear values are derived: with
 * E[gain | X] ~ N(m, s²), EVPPI = s·L(|m|/s), L the unit normal loss.
 */
class InformationValueTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final int CASES = 10_000;
    private static final int REPEATS = 12;
    private static final double MEAN = 5;

    private static double[] normals(String name, int repeat) {
        long state = Draws.future(Draws.key(7, name), repeat);
        return fill(i -> NORMAL.inverseCumulativeProbability(Draws.uniform(state, i)));
    }

    private static double[] correlated(double correlation, double[] one, double[] other) {
        double rest = Math.sqrt(1 - correlation * correlation);
        return fill(i -> correlation * one[i] + rest * other[i]);
    }

    private static double[] fill(IntToDoubleFunction value) {
        double[] values = new double[CASES];
        for (int i = 0; i < CASES; i++) {
            values[i] = value.applyAsDouble(i);
        }
        return values;
    }

    @ParameterizedTest
    @CsvSource({
        "0, 12, 25, 27.730849247724095, 2.696962799, 7.672365897, 8.742350468",
        "0.6, 27, 32.2, 33.600595232822885, 8.455611054, 10.500499896, 11.052838222"
    })
    void worth_twoNormalInputs_meetsTheClosedForm(
            double correlation, double s1, double s2, double s, double one, double two, double all) {
        assertThat(s1 * UnitNormalLoss.of(MEAN / s1)).isCloseTo(one, within(1e-8));
        assertThat(s2 * UnitNormalLoss.of(MEAN / s2)).isCloseTo(two, within(1e-8));
        assertThat(s * UnitNormalLoss.of(MEAN / s)).isCloseTo(all, within(1e-8));
        double[] ones = new double[REPEATS];
        double[] twos = new double[REPEATS];
        double[] alls = new double[REPEATS];
        for (int r = 0; r < REPEATS; r++) {
            double[] x1 = normals("one", r);
            double[] x2 = correlated(correlation, x1, normals("two", r));
            double[] gain = fill(i -> -(-155 + 6 * (10 + 2 * x1[i]) + 5 * (20 + 5 * x2[i])));
            double[] z1 = InformationValue.scores(x1);
            double[] z2 = InformationValue.scores(x2);
            ones[r] = InformationValue.worth(List.of(z1), List.of(gain));
            twos[r] = InformationValue.worth(List.of(z2), List.of(gain));
            alls[r] = InformationValue.worth(List.of(z1, z2), List.of(gain));
        }
        assertMean(ones, one);
        assertMean(twos, two);
        assertMean(alls, all);
    }

    private static void assertMean(double[] repeats, double expected) {
        Sample sample = new Sample(repeats);
        assertThat(sample.mean()).isCloseTo(expected, within(4 * sample.standardError()));
    }

    /**
     * A costs 900, B 500 + 480,000 λ with λ ~ Gamma(4, rate 3309); derived, by E min = 500 + 480,000 (4/3309 · F(thr;
     * 5) + thr (1 − F(thr; 4))). The draws are the even quantiles, so what is left is how well a spline of the normal
     * score follows λ: half a percent.
     */
    @Test
    void worth_gammaRate_meetsTheClosedForm() {
        GammaDistribution rate = new GammaDistribution(4, 1 / 3309.0);
        double[] lambda = fill(i -> rate.inverseCumulativeProbability((i + 0.5) / CASES));
        double[] gain = fill(i -> 900 - (500 + 480_000 * lambda[i]));
        double worth = InformationValue.worth(List.of(InformationValue.scores(lambda)), List.of(gain));
        assertThat(worth).isCloseTo(34.8703497, within(0.005 * 34.8703497));
    }

    @Test
    void worth_gammaRateBehindLuck_isTheSame() {
        GammaDistribution rate = new GammaDistribution(4, 1 / 3309.0);
        double[] repeats = new double[REPEATS];
        for (int r = 0; r < REPEATS; r++) {
            double[] luck = normals("luck", r);
            double[] z = normals("rate", r);
            double[] gain = fill(i -> 400
                    + 300 * luck[i]
                    - 480_000 * rate.inverseCumulativeProbability(NORMAL.cumulativeProbability(z[i])));
            repeats[r] = InformationValue.worth(List.of(InformationValue.scores(z)), List.of(gain));
        }
        assertMean(repeats, 34.8703497);
    }

    /** A gain with a bend, 100·(z − ½)₊ − 40, is above 0 from z = 0.9 on: 100·L(0.9), derived. Needs all five knots. */
    @Test
    void worth_gainWithABend_meetsTheClosedForm() {
        double[] z = fill(i -> NORMAL.inverseCumulativeProbability((i + 0.5) / CASES));
        double[] gain = fill(i -> 100 * Math.max(0, z[i] - 0.5) - 40);
        double expected = 100 * UnitNormalLoss.of(0.9);
        assertThat(InformationValue.worth(List.of(InformationValue.scores(z)), List.of(gain)))
                .isCloseTo(expected, within(0.005 * expected));
    }

    /** Net benefits iid N(0, 1), all of them learned: E max of k (derived). */
    @ParameterizedTest
    @CsvSource({"2, 0.5641895835", "3, 0.8462843753", "4, 1.0293753730"})
    void worth_equalOptions_isTheExpectedGreatest(int options, double expected) {
        double[] repeats = new double[REPEATS];
        for (int r = 0; r < REPEATS; r++) {
            List<double[]> benefits = new ArrayList<>();
            for (int k = 0; k < options; k++) {
                benefits.add(normals("option " + k, r));
            }
            double[] blind = benefits.get(0);
            List<double[]> gains = benefits.subList(1, options).stream()
                    .map(b -> fill(i -> b[i] - blind[i]))
                    .toList();
            List<double[]> scores =
                    benefits.stream().map(InformationValue::scores).toList();
            repeats[r] = InformationValue.worth(scores, gains);
        }
        assertMean(repeats, expected);
    }

    @Test
    void worth_inputWithoutEffect_isExactlyZero() {
        for (int r = 0; r < REPEATS; r++) {
            double[] inert = InformationValue.scores(normals("inert", r));
            double[] luck = normals("luck", r);
            double[] gain = fill(i -> -0.05 + 3 * luck[i]);
            assertThat(InformationValue.worth(List.of(inert), List.of(gain))).isZero();
        }
    }

    @Test
    void worth_inputThatCanNotTurnTheChoice_isExactlyZero() {
        double[] z = normals("one", 0);
        double[] luck = normals("luck", 0);
        double[] gain = fill(i -> -60 + 10 * z[i] + luck[i]);
        assertThat(InformationValue.worth(List.of(InformationValue.scores(z)), List.of(gain)))
                .isZero();
        double[] closer = fill(i -> -10 + 10 * z[i] + luck[i]);
        assertThat(InformationValue.worth(List.of(InformationValue.scores(z)), List.of(closer)))
                .isPositive();
    }

    @Test
    void worth_noOtherOption_isZero() {
        assertThat(InformationValue.worth(List.of(InformationValue.scores(normals("one", 0))), List.of()))
                .isZero();
    }

    /** Φ⁻¹ of (rank − ½)/n: derived. */
    @Test
    void scores_fourValues_areThoseOfTheirRanks() {
        double outer = NORMAL.inverseCumulativeProbability(0.875);
        double inner = NORMAL.inverseCumulativeProbability(0.625);
        assertThat(InformationValue.scores(new double[] {0.9, -4, 0.2, 0.3}))
                .containsExactly(new double[] {outer, -outer, -inner, inner}, within(1e-12));
    }
}
