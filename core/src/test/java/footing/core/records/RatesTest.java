package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Exact limits of a count and the gamma distribution of a rate. */
class RatesTest {
    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(RatesTest.class, "rates.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void rates_referenceInputs_giveTheReferenceValue(ReferenceValue r) {
        r.check(
                switch (r.function()) {
                    case "limitLow" -> PoissonLimits.of(r.whole(0), r.number(1)).low();
                    case "limitHigh" ->
                        PoissonLimits.of(r.whole(0), r.number(1)).high();
                    case "upper" -> PoissonLimits.upper(r.whole(0), r.number(1));
                    case "hoursFactorLow" ->
                        r.whole(0) / PoissonLimits.of(r.whole(0), r.number(1)).high();
                    case "hoursFactorHigh" ->
                        r.whole(0) / PoissonLimits.of(r.whole(0), r.number(1)).low();
                    case "judgedShape" ->
                        GammaRate.ofJudgements(r.number(0), r.number(1), r.number(2))
                                .shape();
                    case "judgedRate" ->
                        GammaRate.ofJudgements(r.number(0), r.number(1), r.number(2))
                                .rate();
                    default -> ofGamma(r, new GammaRate(r.number(0), r.number(1)));
                });
    }

    private static double ofGamma(ReferenceValue r, GammaRate rate) {
        return switch (r.function()) {
            case "cumulative" -> rate.cumulative(r.number(2));
            case "quantile" -> rate.quantile(r.number(2));
            case "hoursQuantile" -> 1 / rate.quantile(r.number(2));
            case "mean" -> rate.mean();
            case "meanHours" -> 1 / rate.mean();
            case "chanceOf" -> rate.chanceOf(r.whole(3), r.number(2));
            case "chanceUpTo" ->
                IntStream.rangeClosed(0, r.whole(3))
                        .mapToDouble(n -> rate.chanceOf(n, r.number(2)))
                        .sum();
            case "nextMean" -> moment(rate, r.number(2), 1);
            case "nextVariance" -> moment(rate, r.number(2), 2) - Math.pow(moment(rate, r.number(2), 1), 2);
            default -> throw new AssertionError(r.function());
        };
    }

    private static double moment(GammaRate rate, double hours, int power) {
        return IntStream.range(0, 400)
                .mapToDouble(n -> Math.pow(n, power) * rate.chanceOf(n, hours))
                .sum();
    }

    @Test
    void after_nistExample_addsTheRecords() {
        assertThat(new GammaRate(2, 1400).after(2, 1909)).isEqualTo(new GammaRate(4, 3309));
    }

    @Test
    void chanceOf_allCounts_addUpWithTheMeanAndVariance() {
        GammaRate rate = new GammaRate(4, 3309);
        double[] chances =
                IntStream.range(0, 200).mapToDouble(n -> rate.chanceOf(n, 1000)).toArray();
        double mean = IntStream.range(0, 200).mapToDouble(n -> n * chances[n]).sum();
        double squares =
                IntStream.range(0, 200).mapToDouble(n -> n * n * chances[n]).sum();
        assertThat(IntStream.range(0, 200).mapToDouble(n -> chances[n]).sum()).isCloseTo(1, within(1e-12));
        assertThat(mean).isCloseTo(1.2088244183, within(1e-9));
        assertThat(squares - mean * mean).isCloseTo(1.5741385368, within(1e-9));
    }

    @Test
    void quantile_manyShapes_isTheInverseOfCumulative() {
        for (double shape : new double[] {0.05, 0.3, 1, 4, 60, 5000}) {
            for (double p : new double[] {1e-6, 0.1, 0.5, 0.9, 0.999999}) {
                GammaRate rate = new GammaRate(shape, 750);
                double x = rate.quantile(p);
                assertThat(rate.cumulative(x)).isCloseTo(p, within(1e-10 * Math.min(p, 1 - p) + 1e-15));
                assertThat(rate.survival(x)).isCloseTo(1 - p, within(1e-12));
            }
        }
    }

    @Test
    void limits_noFlats_areAnUpperBoundAlone() {
        assertThat(PoissonLimits.of(0, 0.8).low()).isZero();
        assertThat(PoissonLimits.of(0, 0.8).high()).isGreaterThan(2);
    }

    @Test
    void guards_nonsense_isRefused() {
        assertThatThrownBy(() -> new GammaRate(Double.NaN, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> PoissonLimits.of(-1, 0.8)).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> PoissonLimits.of(3, Double.NaN)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> GammaRate.ofJudgements(200, 250, 0.95)).hasMessageContaining("typical");
    }
}
