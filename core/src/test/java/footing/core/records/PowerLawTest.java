package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PowerLawTest {
    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(PowerLawTest.class, "power-law.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void of_referenceData_givesTheReferenceValue(ReferenceValue r) {
        if (r.function().startsWith("grouped")) {
            grouped(r);
            return;
        }
        PowerLaw law = law(r.inputs().get(0));
        r.check(
                switch (r.function()) {
                    case "shape" -> law.shape();
                    case "rate" -> law.rate();
                    case "scale" -> Math.pow(law.rate(), -1 / law.shape());
                    case "intensity" -> law.intensity(r.number(1));
                    case "unbiased" -> law.shape() * (law.events() - 1) / law.events();
                    case "logLikelihood" -> law.logLikelihood();
                    case "gain" -> law.gainOverEven();
                    case "low95" -> law.limits(0.95).low();
                    case "high95" -> law.limits(0.95).high();
                    case "laplace" -> law.laplace();
                    case "militaryHandbook" -> law.militaryHandbook();
                    default -> throw new AssertionError(r.function());
                });
    }

    private static void grouped(ReferenceValue r) {
        double[] all = r.from(0);
        double[] ends = Arrays.copyOf(all, all.length / 2);
        int[] counts = Arrays.stream(all, all.length / 2, all.length)
                .mapToInt(x -> (int) x)
                .toArray();
        GroupedPowerLaw law = GroupedPowerLaw.of(ends, counts);
        r.check(
                switch (r.function()) {
                    case "groupedShape" -> law.shape();
                    case "groupedRate" -> law.rate();
                    default -> law.intensity(ends[ends.length - 1]);
                });
    }

    private static PowerLaw law(String id) {
        return PowerLaw.of(DataSet.windows(id)).orElseThrow();
    }

    /** NIST/SEMATECH e-Handbook 8.2.3.4: an improving system; its chance under an even flow is .98901. */
    @Test
    void militaryHandbook_improvingSystem_isLarge() {
        double chance =
                new ChiSquaredDistribution(20).cumulativeProbability(law("nist").militaryHandbook());
        assertThat(chance).isCloseTo(0.98901, within(6e-6));
    }

    /** The 90 % limits of a single system, 2nβ/β̂ being chi-squared with 2n degrees of freedom: .29147 to .84373. */
    @Test
    void limits_ofTheLikelihood_lieNearTheExactOnes() {
        Limits limits = law("nist").limits(0.9);
        assertThat(limits.low()).isCloseTo(0.2914684550, within(0.02));
        assertThat(limits.high()).isCloseTo(0.8437295609, within(0.06));
    }

    /** A set seen only from an age on: what was never watched must not count as time without flats. */
    @Test
    void of_setsSeenFromAnAgeOn_dontLookLikeWorseningOnes() {
        PowerLaw.Window late = new PowerLaw.Window(500, 1000, List.of(550.0, 650.0, 760.0, 840.0, 950.0));
        List<PowerLaw.Window> right = Collections.nCopies(4, late);
        List<PowerLaw.Window> wrong = Collections.nCopies(4, new PowerLaw.Window(0, 1000, late.ages()));
        assertThat(PowerLaw.of(right).orElseThrow().limits(0.95).contains(1)).isTrue();
        assertThat(PowerLaw.of(wrong).orElseThrow().limits(0.95).low()).isGreaterThan(2);
    }

    @Test
    void wornTireEffect_evenFlats_isNone() {
        assertThat(PowerLaw.wornTireEffect(1)).isCloseTo(0, within(1e-12));
        assertThat(PowerLaw.wornTireEffect(2)).isCloseTo(2, within(1e-12));
    }

    /** Share of a life's flats in its second half, once by the power law and once by 1 + g(a − ½). */
    @Test
    void wornTireEffect_anyShape_keepsTheSecondHalf() {
        for (double shape : new double[] {0.8, 1.2, 1.4, 1.9}) {
            double g = PowerLaw.wornTireEffect(shape);
            assertThat(0.5 + g / 8).isCloseTo(1 - Math.pow(0.5, shape), within(1e-12));
        }
    }

    @Test
    void of_oneFlat_isRefused() {
        assertThat(PowerLaw.of(List.of(new PowerLaw.Window(0, 500, List.of(250.0)))))
                .isEmpty();
        assertThatThrownBy(() -> new PowerLaw.Window(0, 500, List.of(600.0))).hasMessageContaining("watched");
        assertThatThrownBy(() -> new PowerLaw.Window(Double.NaN, 500, List.of()))
                .hasMessageContaining("watched");
    }
}
