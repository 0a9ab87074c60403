package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
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
                    case "unbiased" -> law.unbiasedShape();
                    case "hoursBetween" -> 1 / law.intensity(r.number(1));
                    case "exactLow90" -> exact(law, 0.05);
                    case "exactHigh90" -> exact(law, 0.95);
                    case "misfit" -> law.misfit();
                    case "evenRate" -> law.events() / watched(r.inputs().get(0));
                    case "evenLog" -> law.logLikelihood() - law.gainOverEven() / 2;
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
                    case "groupedHours" -> 1 / law.intensity(ends[ends.length - 1]);
                    default -> law.intensity(ends[ends.length - 1]);
                });
    }

    /** Of one system watched from new, 2n times the shape over its best fit is chi-squared with 2n degrees of freedom. */
    private static double exact(PowerLaw law, double p) {
        int degrees = 2 * law.events();
        return law.shape() * new ChiSquaredDistribution(degrees).inverseCumulativeProbability(p) / degrees;
    }

    private static double watched(String id) {
        return DataSet.windows(id).stream().mapToDouble(w -> w.to() - w.from()).sum();
    }

    /** Chances of the valve seats' statistics if they came evenly (R 4.2), as printed: .02648, .0086524, .18453. */
    @Test
    void statistics_ofValveSeatsAndNist_haveTheirChances() {
        PowerLaw seats = law("seats");
        assertThat(1 - new ChiSquaredDistribution(1).cumulativeProbability(seats.gainOverEven()))
                .isCloseTo(0.02648, within(6e-6));
        assertThat(new ChiSquaredDistribution(96).cumulativeProbability(seats.militaryHandbook()))
                .isCloseTo(0.0086524, within(6e-8));
        assertThat(2
                        * new NormalDistribution()
                                .cumulativeProbability(law("nist").laplace()))
                .isCloseTo(0.18453, within(6e-6));
    }

    /** Two flats of one age on one set: both count. */
    @Test
    void of_sameAgeTwice_countsBoth() {
        assertThat(law("seats").events()).isEqualTo(48);
        assertThat(DataSet.windows("seats")).hasSize(41).anyMatch(w -> w.ages().equals(List.of(326.0, 653.0, 653.0)));
    }

    /** Thirty flats that do follow a law look worse than the limit one time in twenty, within four standard errors. */
    @Test
    void fitsPoorly_flatsThatFollowTheLaw_oneTimeInTwenty() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20270301);
        int trials = 4000;
        int poor = 0;
        for (int i = 0; i < trials; i++) {
            List<Double> ages = random.doubles(30)
                    .map(u -> 1000 * Math.pow(u, 1 / 1.6))
                    .sorted()
                    .boxed()
                    .toList();
            poor += PowerLaw.of(List.of(new PowerLaw.Window(0, 1000, ages)))
                            .orElseThrow()
                            .fitsPoorly()
                    ? 1
                    : 0;
        }
        assertThat(poor / (double) trials).isBetween(0.05 - 4 * 0.00345, 0.05 + 4 * 0.00345);
    }

    @Test
    void fitsPoorly_allFlatsInTheMiddle_isSaid() {
        List<Double> middle = IntStream.range(0, 20).mapToObj(i -> 480.0 + i).toList();
        assertThat(PowerLaw.of(List.of(new PowerLaw.Window(0, 1000, middle)))
                        .orElseThrow()
                        .fitsPoorly())
                .isTrue();
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
