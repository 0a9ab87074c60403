package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import footing.core.plain.MachineDraft;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people in the trade reckon with, as checks of scale (common practice, no source). */
class TradeFactsTest {
    private static final int FUTURES = 4096;

    /** 1,000 of extra start cost over 48 months at promotional rates is about 20 to 22 a month. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.009, 0.019})
    void monthly_thousandMoreOnAPromotionalLoan_isAboutTwentyOne(double rate) {
        MachineDraft draft = new MachineDraft();
        draft.isNew = true;
        draft.entry("plain", When.NOW, "air", "caster");
        draft.entry("dear", When.NOW, "firm", "caster");
        draft.assembly("firm").price = 500;
        draft.loan = Optional.of(new Terms.Loan(rate, 48, 0));
        draft.loanApplies = true;
        MachineFutures run = new MachineFutures(draft.build(), 1).runAll(10);
        EntryAnswer dear = new Entries(run, 0.8).answer().entries().get(1);
        assertThat(dear.startCost()).isEqualTo(1000);
        assertThat(Objects.requireNonNull(dear.monthly()).payment()).isBetween(20.0, 22.0);
    }

    /** With ordinary lives four to five sets of air drives pass in 3,000 h, the first and the last one counted. */
    @Test
    void sets_ordinaryLives_fourToFivePassInThreeThousandHours() {
        MachineDraft draft = new MachineDraft();
        draft.hoursLeft = 3000;
        draft.runOut = 100;
        draft.entry("plain", When.NOW, "air", "caster");
        draft.assembly("air").life = new Metalog(400, 650, 950, Bounds.POSITIVE);
        MachineFutures run = new MachineFutures(draft.build(), 1).runAll(FUTURES);
        assertThat(1 + run.outcome(0).counts().sets()).isBetween(4.0, 5.0);
    }

    /**
     * A pair of air drives at 180 fitted, every 650 h; a pair that can't go flat at 750, every 1,500 h; a flat costs
     * what it costs. No interest, no trade value; 19,500 h, a common multiple of both lives, so that no set is left
     * part-used at the end, and the set that comes off new at the start is taken at its price. Only the flats are drawn.
     */
    private static EntryAnswer dearPair(double airLife, double flatsPerSeason, double costOfAFlat) {
        MachineDraft draft = new MachineDraft();
        draft.hoursLeft = 19_500;
        draft.hoursPerYear = 450;
        draft.shopRate = 0;
        draft.flatsPerSeason = Spread.of(flatsPerSeason);
        draft.fixes.add(new ResolvedCrew.ResolvedFix("any", 1, Spread.of(0), costOfAFlat, false, true, 0));
        draft.entry("air", When.NOW, "air", "caster");
        draft.entry("firm", When.NOW, "firm", "caster");
        draft.assembly("air").life = Spread.of(airLife);
        draft.assembly("air").price = draft.assembly("air").renewalPrice = 180;
        draft.assembly("air").takeOff = 1;
        draft.assembly("firm").kind = Kind.AIRLESS;
        draft.assembly("firm").life = Spread.of(1500);
        draft.assembly("firm").price = draft.assembly("firm").renewalPrice = 750;
        draft.assembly("firm").flatFactor = Spread.of(0);
        MachineFutures run = new MachineFutures(draft.build(), 1).runAll(FUTURES);
        return new Entries(run, 0.8).answer().entries().get(1);
    }

    /**
     * 554 against 1,000 for 1,000 h at 3.33 flats leaves 134 a flat. The flats drawn, 65 on the mean, have a standard
     * error of √65/64 = 0.13, 0.2 % of them: four of those are 1.04 of the 133.85.
     */
    @Test
    void saving_onePointFiveFlatsASeason_turnsNearHundredThirtyFourAFlat() {
        double without = dearPair(650, 1.5, 0).saving().mean();
        assertThat(without).isCloseTo(-19.5 * (1000 - 360 / 0.65), within(1e-6));
        double perFlat = dearPair(650, 1.5, 1).saving().mean() - without;
        assertThat(-without / perFlat).isCloseTo(133.85, within(1.04));
        assertThat(dearPair(650, 1.5, 130).saving().mean()).isNegative();
        assertThat(dearPair(650, 1.5, 138).saving().mean()).isPositive();
    }

    /** A flat at 60 would have to come 3.3 times in 450 h. */
    @Test
    void saving_cheapFlats_turnsNearThreePointThreeASeason() {
        assertThat(dearPair(650, 3.2, 60).saving().mean()).isNegative();
        assertThat(dearPair(650, 3.5, 60).saving().mean()).isPositive();
    }

    /** Within ordinary inputs the answer falls on both sides. */
    @ParameterizedTest
    @CsvSource({
        "650, 1, 60, false",
        "650, 1.5, 60, false",
        "650, 1.5, 200, true",
        "650, 3, 150, true",
        "650, 6, 60, true",
        "390, 1.5, 60, true",
        "975, 1.5, 134, false"
    })
    void saving_ordinaryInputs_fallsOnBothSides(double airLife, double flats, double each, boolean saves) {
        double saving = dearPair(airLife, flats, each).saving().mean();
        if (saves) {
            assertThat(saving).isPositive();
        } else {
            assertThat(saving).isNegative();
        }
    }
}
