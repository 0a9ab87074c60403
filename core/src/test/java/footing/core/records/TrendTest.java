package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether flats come more often by and by, and how many a set has had by an age. */
class TrendTest {
    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(TrendTest.class, "trends.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void of_referenceData_givesTheReferenceValue(ReferenceValue r) {
        String set = r.inputs().get(0);
        r.check(
                switch (r.function()) {
                    case "growth" -> 1 - trend(set).shape();
                    case "shape" -> trend(set).shape();
                    case "scale" ->
                        trend(set).flats()
                                / Math.pow(trend(set).hours(), trend(set).shape());
                    case "hoursBetween" -> trend(set).hoursBetween();
                    case "low" -> trend(set).hoursBetweenLimits(r.number(1)).low();
                    case "high" -> trend(set).hoursBetweenLimits(r.number(1)).high();
                    case "statistic" -> trend(set).statistic();
                    case "reversals" -> trend(set).reversals().count();
                    case "pairs" -> trend(set).reversals().of();
                    case "atLeast" -> trend(set).reversals().atLeast();
                    case "mean" -> step(set, r.number(1)).mean();
                    case "atRisk" -> step(set, r.number(1)).atRisk();
                    case "flats" -> step(set, r.number(1)).flats();
                    default -> throw new AssertionError(r.function());
                });
    }

    private static FlatsTrend trend(String set) {
        PowerLaw.Window window = DataSet.windows(set).get(0);
        return FlatsTrend.of(window.ages(), window.to()).orElseThrow();
    }

    private static MeanCumulative.Step step(String set, double age) {
        return MeanCumulative.of(DataSet.windows(set)).steps().stream()
                .filter(s -> s.age() == age)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void says_improvingAndWorsening_areTold() {
        assertThat(trend("nist").says()).isEqualTo(FlatsTrend.Says.LESS);
        List<Double> late = DoubleStream.iterate(1, i -> i <= 10, i -> i + 1)
                .map(i -> 1000 * Math.pow(i / 10.5, 0.3))
                .boxed()
                .toList();
        assertThat(FlatsTrend.of(late, 1000).orElseThrow().says()).isEqualTo(FlatsTrend.Says.MORE);
    }

    /** Even flats must hardly ever be called a trend: at most one time in twenty, beyond four standard errors. */
    @Test
    void says_evenFlats_isRarelyATrend() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20270302);
        int trials = 4000;
        int said = 0;
        for (int i = 0; i < trials; i++) {
            List<Double> ages =
                    random.doubles(8).map(u -> 1000 * u).sorted().boxed().toList();
            said += FlatsTrend.of(ages, 1000).orElseThrow().says() == FlatsTrend.Says.CANT_TELL ? 0 : 1;
        }
        assertThat(said / (double) trials).isBetween(0.005, 0.05 + 4 * 0.00345);
    }

    /** All orders of four gaps, counted one by one: one of 24 has no reversal, one has all six. */
    @Test
    void reversals_fourGaps_haveTheChancesOfAllOrders() {
        FlatsTrend.Reversals none =
                FlatsTrend.of(List.of(4.0, 7.0, 9.0, 10.0), 12).orElseThrow().reversals();
        assertThat(none.count()).isZero();
        assertThat(none.atMost()).isCloseTo(1 / 24.0, within(1e-12));
        assertThat(none.atLeast()).isCloseTo(1, within(1e-12));
        FlatsTrend.Reversals all =
                FlatsTrend.of(List.of(1.0, 3.0, 6.0, 10.0), 12).orElseThrow().reversals();
        assertThat(all.count()).isEqualTo(6);
        assertThat(all.atLeast()).isCloseTo(1 / 24.0, within(1e-12));
    }

    /** Beyond the number of gaps whose orders are counted: pair by pair, and all orders of fifty. */
    @Test
    void reversals_manyGaps_agreeWithCountingEach() {
        double[] gaps = RandomGeneratorFactory.of("L64X128MixRandom")
                .create(20270303)
                .doubles(50)
                .map(u -> 1 + Math.floor(20 * u))
                .toArray();
        int pairs = 0;
        double sum = 0;
        List<Double> ages = new ArrayList<>();
        for (int i = 0; i < gaps.length; i++) {
            for (int j = i + 1; j < gaps.length; j++) {
                pairs += gaps[i] < gaps[j] ? 1 : 0;
            }
            ages.add(sum += gaps[i]);
        }
        FlatsTrend.Reversals r = FlatsTrend.of(ages, sum).orElseThrow().reversals();
        assertThat(r.count()).isEqualTo(pairs);
        assertThat(r.of()).isEqualTo(50 * 49 / 2);
        assertThat(r.atMost()).isCloseTo(atMost(50, pairs), within(0.002));
        assertThat(r.atLeast()).isCloseTo(1 - atMost(50, pairs - 1), within(0.002));
    }

    /** By the number of orders of n things with k reversals: N(n, k) = N(n, k − 1) + N(n − 1, k) − N(n − 1, k − n). */
    private static double atMost(int n, int most) {
        int all = n * (n - 1) / 2;
        double[] orders = new double[all + 1];
        orders[0] = 1;
        for (int m = 2; m <= n; m++) {
            double[] fewer = orders;
            orders = new double[all + 1];
            for (int k = 0; k <= all; k++) {
                orders[k] = (k > 0 ? orders[k - 1] : 0) + fewer[k] - (k >= m ? fewer[k - m] : 0);
            }
        }
        double sum = Arrays.stream(orders).sum();
        return Arrays.stream(orders, 0, most + 1).sum() / sum;
    }

    /** A log as long as can be is gone through in a moment, and its last step is the mean of all. */
    @Test
    void of_veryManyFlats_areCountedAll() {
        List<Double> ages =
                DoubleStream.iterate(1, x -> x <= 50_000, x -> x + 1).boxed().toList();
        FlatsTrend.Reversals r = FlatsTrend.of(ages, 50_001).orElseThrow().reversals();
        assertThat(r.count()).isZero();
        MeanCumulative mean = MeanCumulative.of(
                List.of(new PowerLaw.Window(0, 50_001, ages), new PowerLaw.Window(0, 50_001, List.of())));
        assertThat(mean.steps()).hasSize(1000);
        assertThat(mean.steps().get(999).mean()).isCloseTo(25_000, within(1e-6));
        assertThat(mean.steps().get(499).age()).isEqualTo(25_000);
    }

    @Test
    void of_tooFewOrOutOfOrder_isRefused() {
        assertThat(FlatsTrend.of(List.of(10.0, 20.0, 30.0), 100)).isEmpty();
        assertThat(FlatsTrend.of(List.of(100.0, 100.0, 100.0, 100.0), 100)).isEmpty();
        assertThatThrownBy(() -> FlatsTrend.of(List.of(20.0, 10.0, 30.0, 40.0), 100))
                .hasMessageContaining("out of order");
        assertThatThrownBy(() -> FlatsTrend.of(List.of(Double.NaN), 100)).hasMessageContaining("out of order");
    }

    /** Sorted lives are no order in time: a trend found in them is an artifact, here as strong as can be. */
    @Test
    void reversals_sortedGaps_areAllThereAre() {
        double[] sum = {0};
        List<Double> ages =
                DataSet.lives("plane-24").stream().map(l -> sum[0] += l.exit()).toList();
        FlatsTrend.Reversals r = FlatsTrend.of(ages, sum[0]).orElseThrow().reversals();
        assertThat(r.count()).isGreaterThan(r.of() - 5);
        assertThat(r.atLeast()).isLessThan(1e-12);
    }

    /** With every set watched to the end the mean is flats by number of sets, and a set alone has no spread. */
    @Test
    void meanCumulative_allWatchedToTheEnd_isFlatsPerSet() {
        List<PowerLaw.Window> windows = List.of(
                new PowerLaw.Window(0, 500, List.of(100.0, 300.0, 300.0)), new PowerLaw.Window(0, 500, List.of(300.0)));
        MeanCumulative.Step last = MeanCumulative.of(windows).steps().get(1);
        assertThat(last.mean()).isCloseTo(2, within(1e-12));
        // Sets of 3 and 1 flats: the mean's error by hand is √(((3 − 2)/2)² + ((1 − 2)/2)²).
        assertThat(last.error()).isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(last.limits(0.8).low()).isPositive().isLessThan(2);
    }

    /** Sets seen from an age on count from there alone. */
    @Test
    void meanCumulative_setSeenLate_countsFromItsEntryOn() {
        MeanCumulative mean = MeanCumulative.of(List.of(
                new PowerLaw.Window(0, 500, List.of(100.0, 400.0)), new PowerLaw.Window(300, 500, List.of(450.0))));
        assertThat(mean.steps()).extracting(MeanCumulative.Step::atRisk).containsExactly(1, 2, 2);
        assertThat(mean.steps().get(2).mean()).isCloseTo(1 + 0.5 + 0.5, within(1e-12));
    }
}
