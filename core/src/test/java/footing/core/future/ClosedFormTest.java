package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Sample;
import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.When;
import footing.core.plain.MachineDraft;
import footing.core.renewal.RenewalOracle;
import java.time.LocalDate;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The simulation against what renewal theory and the Poisson process say, within four standard errors. */
class ClosedFormTest {
    private static final int FUTURES = 20_000;
    private static final Metalog LIFE = new Metalog(350, 650, 900, Bounds.POSITIVE);
    private static final double HOURS = 3000;
    private static final double PER_YEAR = 1000;

    /** Three years without a leap day, so that hours run evenly in time. */
    private static MachineDraft draft() {
        MachineDraft draft = new MachineDraft();
        draft.asOf = LocalDate.of(2029, 1, 1);
        draft.hoursLeft = HOURS;
        draft.hoursPerYear = PER_YEAR;
        draft.entry("carried", When.NOW, "old", "caster");
        return draft;
    }

    /** A new set at the start and renewed with its like: the lives drawn are those of the clipped metalog. */
    private static MachineDraft renewing() {
        MachineDraft draft = draft();
        draft.entry("new", When.NOW, "drive", "caster");
        draft.assembly("drive").life = LIFE;
        draft.assembly("drive").renewalPrice = 80;
        draft.assembly("drive").scrapFee = 5;
        draft.assembly("drive").changeHours = 0.75;
        draft.relevel = 0.25;
        return draft;
    }

    /** Of lives drawn with y clipped to 0.005–0.995. */
    private static double cumulative(double x) {
        return x < LIFE.quantile(Metalog.LEAST_Y) ? 0 : x >= LIFE.quantile(Metalog.MOST_Y) ? 1 : LIFE.cumulative(x);
    }

    /** Mean over y of a function of the life, y clipped above only: a set that is on the machine already, new. */
    private static double overLives(DoubleUnaryOperator of) {
        int n = 200_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += of.applyAsDouble(LIFE.quantile(Math.min((i + 0.5) / n, Metalog.MOST_Y)));
        }
        return sum / n;
    }

    private static void assertMean(double[] values, double expected) {
        Sample sample = new Sample(values);
        assertThat(sample.mean()).isCloseTo(expected, within(4 * sample.standardError()));
    }

    /** The standard error of a variance from the fourth moment. */
    private static void assertVariance(double[] values, double expected) {
        double mean = new Sample(values).mean();
        double[] squares = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            squares[i] = (values[i] - mean) * (values[i] - mean);
        }
        assertMean(squares, expected);
    }

    @Test
    void sets_metalogLives_meetTheRenewalFunction() {
        MachineFutures run = new MachineFutures(renewing().build(), 3).runAll(FUTURES);
        double expected = RenewalOracle.renewals(ClosedFormTest::cumulative, 2, HOURS);
        // 80 each, two wheels; scrap 5 each; an hour in the shop at 40: a renewal is 210 and nothing else is paid
        double[] sets = run.costs(1).clone();
        for (int f = 0; f < sets.length; f++) {
            sets[f] = (sets[f] - run.startCost(1)) / 210;
        }
        assertMean(sets, expected);
        assertThat(run.outcome(1).counts().sets()).isCloseTo(new Sample(sets).mean(), within(1e-9));
    }

    @Test
    void renewals_metalogLivesAndInterest_meetTheDiscountedRenewalCost() {
        MachineDraft draft = renewing();
        draft.discountRate = 0.12;
        draft.inflation = 0.03;
        MachineFutures run = new MachineFutures(draft.build(), 4).runAll(FUTURES);
        double rate = Math.log(1.12 / 1.03) / PER_YEAR;
        double expected = RenewalOracle.discountedCost(ClosedFormTest::cumulative, 2, rate, HOURS, 210);
        assertMean(minus(run.costs(1), run.startCost(1)), expected);
        assertThat(run.startCost(1)).isEqualTo(40);
    }

    private static double[] minus(double[] costs, double constant) {
        double[] less = costs.clone();
        for (int f = 0; f < less.length; f++) {
            less[f] -= constant;
        }
        return less;
    }

    /** Flats mended for 1 and no time: a future's cost is its number of flats. */
    private static MachineDraft flats(double perYear) {
        MachineDraft draft = draft();
        draft.flatsPerSeason = Spread.of(perYear);
        draft.fixes.add(new ResolvedCrew.ResolvedFix("plug", 1, Spread.of(0), 1, false, true, 0));
        return draft;
    }

    @Test
    void flats_neverWorn_arePoisson() {
        MachineFutures run = new MachineFutures(flats(2.5).build(), 5).runAll(FUTURES);
        assertMean(run.costs(0), 7.5);
        assertVariance(run.costs(0), 7.5);
        assertThat(run.outcome(0).counts().flats()).isCloseTo(new Sample(run.costs(0)).mean(), within(1e-9));
    }

    @Test
    void flats_splitOverPositionsWithSealant_arePoissonOfTheirRates() {
        MachineDraft draft = flats(2.5);
        draft.flatsAtDrive = 0.7;
        draft.assembly("old").kind = Kind.SEALANT;
        draft.assembly("old").flatFactor = Spread.of(0.3);
        MachineFutures run = new MachineFutures(draft.build(), 6).runAll(FUTURES);
        double expected = 7.5 * (0.7 * 0.3 + 0.3);
        assertMean(run.costs(0), expected);
        assertVariance(run.costs(0), expected);
    }

    /** Campbell: mean and variance of Σ e^(−rate·t). */
    @Test
    void flats_interest_meetCampbellsTheorem() {
        MachineDraft draft = flats(2.5);
        draft.discountRate = 0.15;
        MachineFutures run = new MachineFutures(draft.build(), 7).runAll(FUTURES);
        RenewalOracle.Moments expected =
                RenewalOracle.poissonDiscountedCost(2.5 / PER_YEAR, Math.log(1.15) / PER_YEAR, HOURS, 1);
        assertMean(run.costs(0), expected.mean());
        assertVariance(run.costs(0), expected.variance());
    }

    /** Λ unknown: mean E Λ, variance E Λ + Var Λ. */
    @Test
    void flats_rateUnknown_areAMixtureOfPoissons() {
        MachineDraft draft = flats(1);
        Metalog rate = new Metalog(1, 2, 5, Bounds.POSITIVE);
        draft.flatsPerSeason = rate;
        MachineFutures run = new MachineFutures(draft.build(), 8).runAll(FUTURES);
        int n = 100_000;
        double square = 0;
        for (int i = 0; i < n; i++) {
            square += Math.pow(3 * rate.draw((i + 0.5) / n), 2) / n;
        }
        double mean = 3 * rate.mean();
        assertMean(run.costs(0), mean);
        assertVariance(run.costs(0), mean + square - mean * mean);
    }

    /** By age x of a set that lasts L, flats come at λ(1 + g(x/L − ½)): λX(1 + g(X/(2L) − ½)) up to X ≤ L. */
    @ParameterizedTest
    @CsvSource({"0, 4000", "1, 4000", "2, 4000", "2, 3000.001"})
    void flats_oneSetOfFixedLife_growWithWear(double slope, double life) {
        MachineDraft draft = flats(3);
        draft.wornTireEffect = slope;
        draft.assembly("old").life = Spread.of(life);
        MachineFutures run = new MachineFutures(draft.build(), 9).runAll(FUTURES);
        double expected = 9 * (1 + slope * (HOURS / (2 * life) - 0.5));
        assertMean(run.costs(0), expected);
        assertVariance(run.costs(0), expected);
    }

    /**
     * A set of random life L, then one that never goes flat: N | L ~ Poisson(λL) whatever the slope, so mean λ E L and
     * variance λ E L + λ² Var L.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 2})
    void flats_oneSetOfRandomLife_dependOnItsLengthAlone(double slope) {
        MachineDraft draft = flats(10);
        draft.hoursLeft = 2 * LIFE.quantile(Metalog.MOST_Y);
        draft.wornTireEffect = slope;
        draft.assembly("old").life = LIFE;
        draft.entry("later", When.WORN, "firm", "caster");
        draft.assembly("firm").kind = Kind.SOLID;
        draft.assembly("firm").flatFactor = Spread.of(0);
        MachineFutures run = new MachineFutures(draft.build(), 10).runAll(FUTURES);
        double rate = 10 / PER_YEAR;
        double mean = rate * overLives(l -> l);
        double variance = mean + rate * rate * overLives(l -> l * l) - mean * mean;
        assertMean(run.costs(1), mean);
        assertVariance(run.costs(1), variance);
    }

    /** A used set lasts as a life known to exceed what it has run. */
    @Test
    void sets_usedSetAtTheStart_isDrawnFromWhatIsLeft() {
        MachineDraft draft = draft();
        draft.hoursLeft = 200;
        draft.wornDrive = 600;
        draft.assembly("old").life = LIFE;
        MachineFutures run = new MachineFutures(draft.build(), 11).runAll(FUTURES);
        double worn = LIFE.cumulative(600);
        double share = (LIFE.cumulative(800) - worn) / (1 - worn);
        double error = Math.sqrt(share * (1 - share) / FUTURES);
        assertThat(run.outcome(0).counts().sets()).isCloseTo(share, within(4 * error));
    }
}
