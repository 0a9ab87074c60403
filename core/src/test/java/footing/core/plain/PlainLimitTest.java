package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedCrew.ResolvedFix;
import footing.core.fleet.When;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Means over many futures against closed forms, within four standard errors. */
class PlainLimitTest {
    private static final int FUTURES = 4000;
    private final MachineDraft draft = new MachineDraft();
    private final MachineDraft.AssemblyDraft air = draft.assembly("air");

    @BeforeEach
    void oneFix() {
        draft.flatsPerSeason = Spread.of(3);
        draft.entry("on-air", When.NOW, "air", "caster");
        draft.assembly("caster").kind = Kind.SOLID;
        draft.assembly("caster").flatFactor = Spread.of(0);
        draft.fixes.add(new ResolvedFix("plug", 1, Spread.of(1), 0, false, true, 0));
    }

    private void checkMean(ToDoubleFunction<PlainFuture> figure, double expected) {
        StreamingStatistics seen = new StreamingStatistics();
        for (int i = 0; i < FUTURES; i++) {
            seen.addValue(figure.applyAsDouble(PlainModel.future(draft.build(), draft.entries.get(0), 7, i)));
        }
        double standardError = seen.getStandardDeviation() / Math.sqrt(FUTURES);
        assertThat(standardError).isPositive();
        assertThat(seen.getMean()).isCloseTo(expected, within(4 * standardError));
    }

    @Test
    void flats_flatHazard_rateTimesHours() {
        checkMean(f -> f.flats().size(), 3 / 500.0 * 1000);
    }

    @Test
    void flats_sharedByPosition_drivesShareOnly() {
        draft.flatsAtDrive = 0.6; // the solid casters have none
        checkMean(f -> f.flats().size(), 0.6 * 6);
    }

    @Test
    void flats_wornTireEffectOverWholeLives_averagesOut() {
        air.life = Spread.of(250); // four whole sets
        draft.wornTireEffect = 2;
        checkMean(f -> f.flats().size(), 6);
    }

    @Test
    void flats_wornTireEffectOnBaldSet_halfMoreThanAverage() {
        air.life = Spread.of(500); // first 500 h average 1, then bald: 1 + g/2 = 1.5
        draft.runOut = 600;
        draft.wornTireEffect = 1;
        checkMean(f -> f.flats().size(), 3 * 1 + 3 * 1.5);
    }

    @Test
    void flats_unknownRateAndSealant_productOfMeans() {
        draft.flatsPerSeason = new Metalog(1, 3, 6, Bounds.POSITIVE);
        air.kind = Kind.SEALANT;
        air.flatFactor = new Metalog(0.2, 0.3, 0.5, Bounds.SHARE);
        double expected = 2 * draft.flatsPerSeason.mean() * air.flatFactor.mean();
        checkMean(f -> f.flats().size(), expected);
    }

    @Test
    void downHours_hourOfDay_leavesPartOfTheDay() {
        // D = 3, day 5, R uniform on 0–5: R < 1 → 3; 1 < R < 3 → R; R > 3 → 3. Mean 0.6 + 0.8 + 1.2 = 2.6
        draft.day = 5;
        draft.fixes.set(0, new ResolvedFix("tow", 1, Spread.of(3), 0, false, true, 0));
        checkMean(PlainFuture::downHours, 6 * 2.6);
    }

    @Test
    void fixes_shares_pickedAsOften() {
        draft.fixes.set(0, new ResolvedFix("plug", 0.7, Spread.of(1), 0, false, true, 0));
        draft.fixes.add(new ResolvedFix("shop", 0.3, Spread.of(1), 0, false, true, 0));
        checkMean(f -> f.flats().stream().filter(x -> x.fix() == 1).count(), 6 * 0.3);
    }

    @Test
    void lives_firstSet_conditionalOnItsHours() {
        // renewed if the set ends within 200 h of its 600: P(L < 800 | L > 600)
        Metalog life = new Metalog(450, 650, 900, Bounds.POSITIVE);
        air.life = life;
        draft.wornDrive = 600;
        draft.hoursLeft = 200;
        draft.flatsPerSeason = Spread.of(0);
        double before = life.cumulative(600);
        double expected = (life.cumulative(800) - before) / (1 - before);
        checkMean(f -> f.sets() > 0 ? 1 : 0, expected);
    }

    @Test
    void lives_lifeUnsure_medianFactorOne() {
        air.life = Spread.of(500); // half of all factors leave less than 500 h
        air.lifeUnsure = 0.4;
        draft.hoursLeft = 500;
        draft.flatsPerSeason = Spread.of(0);
        checkMean(f -> f.sets() > 0 ? 1 : 0, 0.5);
    }
}
