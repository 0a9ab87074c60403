package footing.core.renewal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RenewalOracleTest {

    private static final int RUNS = 40_000;
    private static final Weibull LIFE = new Weibull(2.5, 800);

    static Stream<ReferenceValue> reference() {
        return ReferenceValue.read(RenewalOracleTest.class, "renewal.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void reference(ReferenceValue row) {
        row.check(value(row));
    }

    private static double value(ReferenceValue row) {
        double a = row.number(0);
        double b = row.number(1);
        double c = row.inputs().size() > 2 ? row.number(2) : Double.NaN;
        return switch (row.function()) {
            case "renewals" -> RenewalOracle.renewals(new Weibull(a, b), c);
            case "renewalsMean" -> RenewalOracle.renewals(Weibull.withMean(a, b), c);
            case "renewalsErlang" -> RenewalOracle.renewals(erlang(a), 2, b);
            case "variance" -> RenewalOracle.renewalVariance(Weibull.withMean(a, b), c);
            case "probability" -> RenewalOracle.probability(Weibull.withMean(a, b), row.whole(3), c);
            case "laplace" -> RenewalOracle.laplace(new Weibull(a, b), c);
            case "forEver" ->
                RenewalOracle.discountedCostForEver(RenewalOracle.laplace(new Weibull(a, b), c), row.number(3));
            case "poissonMean" ->
                RenewalOracle.poissonDiscountedCost(a, b, c, row.number(3)).mean();
            case "poissonVariance" ->
                RenewalOracle.poissonDiscountedCost(a, b, c, row.number(3)).variance();
            case "flatsMean" ->
                RenewalOracle.flatsPerSet(new Weibull(a, b), c, row.number(3)).mean();
            case "flatsVariance" ->
                RenewalOracle.flatsPerSet(new Weibull(a, b), c, row.number(3)).variance();
            case "noFlat" -> RenewalOracle.noFlat(new Weibull(a, b), c, row.number(3));
            case "flatsPerTime" ->
                RenewalOracle.flatsPerSet(new Weibull(a, b), c, row.number(3)).mean() / new Weibull(a, b).mean();
            case "fatalShare" -> RenewalOracle.fatalFlatShare(new Weibull(a, b), c);
            case "fatalLife" -> RenewalOracle.meanLifeWithFatalFlats(new Weibull(a, b), c);
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    private static DoubleUnaryOperator erlang(double perTime) {
        return t -> -Math.expm1(-perTime * t) - perTime * t * Math.exp(-perTime * t);
    }

    /** Renewals of an exponential life are Poisson: mean and variance t/mean, whatever the grid does. */
    @Test
    void renewals_exponentialLife_arePoisson() {
        Weibull life = new Weibull(1, 400);

        assertThat(RenewalOracle.renewals(life, 1_000)).isCloseTo(2.5, within(1e-9));
        assertThat(RenewalOracle.renewalVariance(life, 1_000)).isCloseTo(2.5, within(1e-8));
        assertThat(RenewalOracle.probability(life, 2, 1_000)).isCloseTo(Math.exp(-2.5) * 2.5 * 2.5 / 2, within(1e-9));
    }

    @Test
    void discountedCost_exponentialLife_isTheAnnuity() {
        assertThat(RenewalOracle.discountedCost(new Weibull(1, 400), 8e-5, 5_000, 600))
                .isCloseTo(
                        RenewalOracle.poissonDiscountedCost(1 / 400.0, 8e-5, 5_000, 600)
                                .mean(),
                        within(1e-6));
    }

    /** F* = 1 - √π z e^(z²) erfc z with z = rate · scale / 2 for shape 2. */
    @Test
    void laplace_shapeTwo_hasItsClosedForm() {
        for (double rate : new double[] {1e-6, 8e-5, 1e-3, 1e-2}) {
            double z = rate * 1_000 / 2;
            assertThat(RenewalOracle.laplace(new Weibull(2, 1_000), rate))
                    .isCloseTo(1 - Math.sqrt(Math.PI) * z * Math.exp(z * z) * Erf.erfc(z), within(1e-12));
        }
    }

    /** Far off, what is still to come is the discounted cost for ever, shifted: D(T) = D - tail. */
    @Test
    void discountedCost_longHorizon_approachesTheTransform() {
        double rate = 0.002;
        double forEver = RenewalOracle.discountedCostForEver(RenewalOracle.laplace(LIFE, rate), 600);

        assertThat(RenewalOracle.discountedCost(LIFE, rate, 12_000, 600)).isCloseTo(forEver, within(1e-6));
    }

    @Test
    void discountedCost_noDiscount_isTheRenewalFunction() {
        assertThat(RenewalOracle.discountedCost(LIFE, 0, 3_000, 1))
                .isCloseTo(RenewalOracle.renewals(LIFE, 3_000), within(1e-12));
    }

    /** M(t) approaches t/mean + (c² - 1)/2. */
    @Test
    void renewals_longHorizon_followTheAsymptote() {
        double t = 10 * LIFE.mean();

        assertThat(RenewalOracle.renewals(LIFE, t)).isCloseTo(10 + (LIFE.squaredVariation() - 1) / 2, within(1e-6));
    }

    @Test
    void renewals_timeUnitChanged_staySame() {
        assertThat(RenewalOracle.renewals(new Weibull(2.5, 8), 30))
                .isCloseTo(RenewalOracle.renewals(LIFE, 3_000), within(1e-11));
    }

    @Test
    void simulatedRenewals_fixedSeed_lieWithinFourStandardErrors() {
        RenewalSimulation simulation = new RenewalSimulation(20_270_301);
        RenewalSimulation.Estimate count = simulation.estimate(RUNS, s -> s.discountedRenewals(LIFE, 0, 3_000));

        assertWithin(count, RenewalOracle.renewals(LIFE, 3_000));
        // The standard error of a variance is near variance · √(2/n) for a count this close to normal.
        double variance = RenewalOracle.renewalVariance(LIFE, 3_000);
        assertThat(count.variance()).isCloseTo(variance, within(4 * variance * Math.sqrt(2.0 / RUNS)));
    }

    @Test
    void simulatedDiscountedCost_fixedSeed_liesWithinFourStandardErrors() {
        RenewalSimulation.Estimate cost =
                new RenewalSimulation(20_270_302).estimate(RUNS, s -> 600 * s.discountedRenewals(LIFE, 8e-5, 5_000));

        assertWithin(cost, RenewalOracle.discountedCost(LIFE, 8e-5, 5_000, 600));
    }

    @Test
    void simulatedFlats_fixedSeed_lieWithinFourStandardErrors() {
        Weibull life = new Weibull(4, 1_500);
        for (double power : new double[] {1, 2}) {
            RenewalOracle.Moments expected = RenewalOracle.flatsPerSet(life, 900, power);
            RenewalSimulation simulation = new RenewalSimulation(20_270_303);
            RenewalSimulation.Estimate flats = simulation.estimate(RUNS, s -> s.flats(life, 900, power));
            RenewalSimulation.Estimate square =
                    simulation.estimate(RUNS, s -> Math.pow(s.flats(life, 900, power) - expected.mean(), 2));
            RenewalSimulation.Estimate none = simulation.estimate(RUNS, s -> s.flats(life, 900, power) == 0 ? 1 : 0);

            assertWithin(flats, expected.mean());
            assertWithin(square, expected.variance());
            assertWithin(none, RenewalOracle.noFlat(life, 900, power));
        }
    }

    @Test
    void simulatedFatalFlats_fixedSeed_lieWithinFourStandardErrors() {
        Weibull life = new Weibull(3, 1_000);
        RenewalSimulation simulation = new RenewalSimulation(20_270_304);

        assertWithin(
                simulation.estimate(RUNS, s -> Math.min(s.life(life), s.exponential(4_000))),
                RenewalOracle.meanLifeWithFatalFlats(life, 4_000));
        assertWithin(
                simulation.estimate(RUNS, s -> s.exponential(4_000) < s.life(life) ? 1 : 0),
                RenewalOracle.fatalFlatShare(life, 4_000));
    }

    private static void assertWithin(RenewalSimulation.Estimate estimate, double expected) {
        assertThat(estimate.mean()).isCloseTo(expected, Offset.offset(4 * estimate.standardError()));
    }
}
