package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Machines that share their ground, against the ten pumps of the literature. */
class CrewRatesTest {
    /** Shape ~ Exp(1), rate ~ Gamma(.1, 1), as densities of their logarithms. */
    private static final CrewRates.Prior GEORGE =
            (shape, rate) -> Math.log(shape) - shape + 0.1 * Math.log(rate) - rate;
    /** Shape 1.802 to a hair, rate ~ Gamma(.01, 1). */
    private static final CrewRates.Prior FIXED =
            (shape, rate) -> -Math.pow(Math.log(shape / 1.802) / 5e-4, 2) / 2 + 0.01 * Math.log(rate) - rate;

    private static final Map<String, CrewRates> KNOWN = new HashMap<>();

    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(CrewRatesTest.class, "pumps.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void pumps_eachMethod_givesTheReferenceValue(ReferenceValue r) {
        String set = r.inputs().get(0);
        int pump = r.inputs().size() > 1 ? r.whole(1) : 0;
        r.check(
                switch (r.function()) {
                    case "bestShape" -> best(set)[0];
                    case "bestRate" -> best(set)[1];
                    case "bestLog" -> CrewRates.logLikelihood(pumps(set), best(set)[0], best(set)[1]);
                    case "plugInMean" -> plugIn(set, pump).mean();
                    case "plugInDeviation" -> Math.sqrt(plugIn(set, pump).variance());
                    case "fullShape" -> rates(set, GEORGE).meanShape();
                    case "fullRate" -> rates(set, GEORGE).meanRate();
                    case "fullMean" -> rates(set, GEORGE).mean(pump);
                    case "fullDeviation" -> rates(set, GEORGE).deviation(pump);
                    case "fixedRate" -> rates(set, FIXED).meanRate();
                    case "fixedMean" -> rates(set, FIXED).mean(pump);
                    default -> throw new AssertionError(r.function());
                });
    }

    private static CrewRates rates(String set, CrewRates.Prior prior) {
        return KNOWN.computeIfAbsent(set + (prior == GEORGE), s -> CrewRates.of(pumps(set), prior));
    }

    private static List<CrewRates.Counted> pumps(String set) {
        String[] row = DataSet.row("pumps-data.tsv", set);
        double[] failures = DataSet.numbers(row[1]);
        double[] times = DataSet.numbers(row[2]);
        return IntStream.range(0, 10)
                .mapToObj(i -> new CrewRates.Counted(failures[i], times[i]))
                .toList();
    }

    private static GammaRate plugIn(String set, int pump) {
        CrewRates.Counted p = pumps(set).get(pump);
        double[] best = best(set);
        return new GammaRate(best[0], best[1]).after(p.events(), p.hours());
    }

    /** The shape and rate of greatest marginal likelihood, by a search that halves its steps. */
    private static double[] best(String set) {
        List<CrewRates.Counted> pumps = pumps(set);
        double[] at = {0, 0};
        double step = 0.5;
        double value = log(pumps, at);
        while (step > 1e-9) {
            boolean moved = false;
            for (double[] way : new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}}) {
                double[] next = {at[0] + step * way[0], at[1] + step * way[1]};
                double there = log(pumps, next);
                if (there > value) {
                    at = next;
                    value = there;
                    moved = true;
                }
            }
            step = moved ? step : step / 2;
        }
        return new double[] {Math.exp(at[0]), Math.exp(at[1])};
    }

    private static double log(List<CrewRates.Counted> pumps, double[] at) {
        return CrewRates.logLikelihood(pumps, Math.exp(at[0]), Math.exp(at[1]));
    }

    @Test
    void rate_fullBayes_isWiderThanThePlugIn() {
        assertThat(rates("tB", GEORGE).deviation(6))
                .isGreaterThan(1.2 * Math.sqrt(plugIn("tB", 6).variance()));
    }

    @Test
    void rate_quantiles_agreeWithTheMomentsOfTheSameGrid() {
        CrewRates rates = rates("tB", GEORGE);
        for (int pump = 0; pump < 10; pump++) {
            Posterior p = rates.rate(pump);
            double mean = 0;
            int n = 20000;
            for (int i = 0; i < n; i++) {
                mean += p.quantile((i + 0.5) / n) / n;
            }
            assertThat(mean / rates.mean(pump)).isCloseTo(1, within(2e-3));
        }
    }

    /** One machine, the crew's distribution all but known: then the posterior is the gamma distribution itself. */
    @Test
    void rate_crewKnown_isTheConjugateGamma() {
        CrewRates.Prior known = (shape, rate) ->
                -(Math.pow(Math.log(shape / 3) / 1e-3, 2) + Math.pow(Math.log(rate / 600) / 1e-3, 2)) / 2;
        Posterior p =
                CrewRates.of(List.of(new CrewRates.Counted(4, 800)), known).rate(0);
        GammaRate exact = new GammaRate(7, 1400);
        for (double q : new double[] {0.01, 0.1, 0.5, 0.9, 0.99}) {
            assertThat(p.quantile(q) / exact.quantile(q)).isCloseTo(1, within(1e-4));
            assertThat(p.cumulative(exact.quantile(q))).isCloseTo(q, within(1e-4));
        }
    }

    @Test
    void rate_noRecords_isThePrior() {
        CrewRates none = CrewRates.of(List.of(new CrewRates.Counted(0, 0)), FlatsPrior.COMMON);
        double wide = Math.log(none.rate(0).quantile(0.9) / none.rate(0).quantile(0.1));
        assertThat(none.rate(0).median() * 1000).isBetween(3.5, 5.5);
        assertThat(wide).isGreaterThan(2 * 1.2816 * 1.08);
    }

    @Test
    void rate_aboutFive_isWiderThanFiveCounted() {
        double weight = Memory.weight(5);
        Limits counted = rate(5, 700).limits(0.8);
        Limits about = rate(5 * weight, 700 * weight).limits(0.8);
        assertThat(about.high() / about.low()).isGreaterThan(1.15 * counted.high() / counted.low());
        assertThat(about.low() * 700).isBetween(2.0, 4.0);
        assertThat(about.high() * 700).isBetween(6.5, 11.0);
    }

    private static Posterior rate(double events, double hours) {
        return CrewRates.of(List.of(new CrewRates.Counted(events, hours)), FlatsPrior.COMMON)
                .rate(0);
    }

    @Test
    void rate_noFlatsInManyHours_liesBelowThePrior() {
        Posterior p = rate(0, 2000);
        assertThat(p.quantile(0.9) * 1000).isLessThan(1.6);
        assertThat(p.quantile(0.9) * 1000).isGreaterThan(0.2);
    }

    @Test
    void rate_machineWithoutHours_leansOnTheCrew() {
        List<CrewRates.Counted> crew = List.of(
                new CrewRates.Counted(12, 1000),
                new CrewRates.Counted(11, 1000),
                new CrewRates.Counted(13, 1000),
                new CrewRates.Counted(0, 0));
        assertThat(CrewRates.of(crew, FlatsPrior.COMMON).rate(3).median() * 1000)
                .isBetween(9.0, 14.0);
    }

    @Test
    void counted_nonsense_isRefused() {
        assertThatThrownBy(() -> new CrewRates.Counted(2, 0)).hasMessageContaining("no hours");
        assertThatThrownBy(() -> new CrewRates.Counted(Double.NaN, 10)).hasMessageContaining("below 0");
    }
}
