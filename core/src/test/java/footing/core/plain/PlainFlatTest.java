package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedCrew.FullWeeks;
import footing.core.fleet.ResolvedCrew.ResolvedFix;
import footing.core.fleet.Season;
import footing.core.fleet.When;
import java.time.MonthDay;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What one flat costs, by hand. A route day without end or of no length makes the hour of day certain. */
class PlainFlatTest {
    private final MachineDraft draft = new MachineDraft();
    private final MachineDraft.AssemblyDraft air = draft.assembly("air");

    @BeforeEach
    void oneFix() {
        draft.flatsPerSeason = Spread.of(5);
        draft.day = 1e9;
        draft.crewOutput = 0.8;
        draft.overtimePremium = 0.5;
        draft.variableCost = 0.1;
        draft.makeUpToday = 0.3;
        draft.makeUpLater = Spread.of(0.25);
        draft.entry("on-air", When.NOW, "air", "caster");
    }

    private void fix(double delay, double cost, boolean ruins, double output) {
        draft.fixes.add(new ResolvedFix("fix", 1, Spread.of(delay), cost, ruins, !ruins, output));
    }

    private PlainFuture future() {
        PlainFuture future = PlainModel.future(draft.build(), draft.entries.get(0), 1, 0);
        assertThat(future.flats()).hasSizeGreaterThan(2);
        return future;
    }

    private void checkEach(double down, double lost, double paid, double lostWork) {
        for (PlainFuture.Flat flat : future().flats()) {
            assertThat(flat.down()).isCloseTo(down, within(1e-5));
            assertThat(flat.lost()).isCloseTo(lost, within(1e-5));
            assertThat(flat.paid()).isCloseTo(paid, within(1e-3));
            assertThat(flat.lostWork()).isCloseTo(lostWork, within(1e-3));
        }
    }

    @Test
    void flat_longDay_splitsTheDisplacedWork() {
        // down 2 h; displaced 2·0.8·(1 − 0.5) = 0.8; today 0.3; later 0.5·0.25 = 0.125; lost 0.375
        // paid 0.425 · 2 people · 25 · 1.5 = 31.875; lost work 0.375 · 100 · 0.9 = 33.75
        fix(2, 12, false, 0.5);
        checkEach(2, 0.375, 31.875, 33.75);
        PlainFuture f = future();
        int n = f.flats().size();
        assertThat(f.part(PlainPart.REPAIRS)).isCloseTo(12 * n, within(1e-9));
        assertThat(f.part(PlainPart.CREW_TIME)).isCloseTo(31.875 * n, within(1e-9));
        assertThat(f.part(PlainPart.LOST_WORK)).isCloseTo(33.75 * n, within(1e-9));
        assertThat(f.downHours()).isCloseTo(2.0 * n, within(1e-9));
        assertThat(f.displacedHours()).isCloseTo(0.8 * n, within(1e-9));
        assertThat(f.lostHours()).isCloseTo(0.375 * n, within(1e-9));
    }

    @Test
    void flat_shortDelay_allMadeUpToday() {
        fix(0.25, 0, false, 0); // displaced 0.2 < 0.3: paid 0.2 · 2 · 25 · 1.5 = 15
        checkEach(0.25, 0, 15, 0);
    }

    @Test
    void flat_dayAtItsEnd_finishedAfterHoursByOne() {
        draft.day = 1e-9; // down 0, after 1.5 h of one person: 1.5 · 25 · 1.5 = 56.25
        fix(1.5, 0, false, 0);
        checkEach(0, 0, 56.25, 0);
    }

    @Test
    void flat_moreThanTwoHoursAfterTheDay_waitGoesOn() {
        // down 3 h; displaced 2.4; today 0.3; later 2.1·0.25 = 0.525; lost 1.575
        // paid 0.825 · 2 · 37.5 = 61.875; lost work 1.575 · 90 = 141.75
        draft.day = 1e-9;
        fix(3, 0, false, 0);
        checkEach(3, 1.575, 61.875, 141.75);
    }

    @Test
    void flat_inFullWeeks_theFirstRangeThatHoldsTheDay() {
        // all year is full, the second range is too late: today 0, later 0.8·0.5, lost 0.4
        fix(1, 0, false, 0);
        draft.fullWeeks.add(new FullWeeks(new Season(MonthDay.of(7, 1), MonthDay.of(6, 30)), 0, Spread.of(0.5)));
        draft.fullWeeks.add(new FullWeeks(Season.ALL_YEAR, 9, Spread.of(1)));
        checkEach(1, 0.4, 0.4 * 2 * 37.5, 0.4 * 90);
    }

    @Test
    void flat_fullWeeksInPartOfTheYear_byTheDayOfTheFlat() {
        // outside: lost (0.8 − 0.3)·0.75 = 0.375; November to February nothing is made up: 0.8
        fix(1, 0, false, 0);
        draft.flatsPerSeason = Spread.of(50);
        draft.fullWeeks.add(new FullWeeks(new Season(MonthDay.of(11, 1), MonthDay.of(2, 28)), 0, Spread.of(0)));
        for (PlainFuture.Flat flat : future().flats()) {
            double dayOfYear = flat.hour() <= 500 ? flat.hour() / 500 * 365 : (flat.hour() - 500) / 500 * 366;
            double leap = flat.hour() <= 500 ? 0 : 1;
            boolean full = dayOfYear < 59 || dayOfYear >= 304 + leap;
            assertThat(flat.lost()).isCloseTo(full ? 0.8 : 0.375, within(1e-9));
        }
    }

    @Test
    void repairs_ruinedYoungTire_oneTire() {
        air.tirePrice = 70; // life is a million hours: a < ½ always
        fix(1, 9, true, 0);
        assertThat(future().part(PlainPart.REPAIRS))
                .isCloseTo(79.0 * future().flats().size(), within(1e-9));
    }

    @Test
    void repairs_ruinedOldTire_bothSidesOnceThenOne() {
        // first 9 + 2·(70 + 4) + ½·1·40 = 177, then the set is young: 79 each
        air.tirePrice = 70;
        air.scrapFee = 4;
        air.changeHours = 1;
        draft.wornDrive = 600_000;
        fix(1, 9, true, 0);
        PlainFuture f = future();
        assertThat(f.part(PlainPart.REPAIRS)).isCloseTo(177 + 79.0 * (f.flats().size() - 1), within(1e-9));
        assertThat(f.sets()).isZero();
        air.kind = Kind.FOAM; // foam needs no equal pair
        assertThat(future().part(PlainPart.REPAIRS))
                .isCloseTo(79.0 * future().flats().size(), within(1e-9));
    }

    @Test
    void renewals_ruinedOldTireOfCarried_wantedIsFitted() {
        // renewals 2·300 + 2·4 + 1.5·40 = 668, repairs of that flat the fix alone
        air.scrapFee = 4;
        draft.wornDrive = 600_000;
        fix(1, 9, true, 0);
        MachineDraft.AssemblyDraft foam = draft.assembly("foam");
        foam.kind = Kind.FOAM;
        foam.price = 300;
        foam.changeHours = 1.5;
        foam.ruinFactor = Spread.of(0);
        PlainFuture f = PlainModel.future(draft.build(), draft.entry("foam", When.WORN, "foam", "caster"), 1, 0);
        assertThat(f.flats()).hasSize(1);
        assertThat(f.part(PlainPart.RENEWALS)).isCloseTo(668, within(1e-9));
        assertThat(f.part(PlainPart.REPAIRS)).isCloseTo(9, within(1e-9));
        assertThat(f.wantedFitted()).isTrue();
    }

    @Test
    void flats_factorsByFix_onlyThoseThatCanHappen() {
        fix(1, 0, false, 0);
        draft.fixes.set(0, new ResolvedFix("rim leak", 1, Spread.of(1), 0, false, false, 0));
        air.flatFactor = Spread.of(0);
        air.ruinFactor = Spread.of(0);
        assertThat(future().flats()).isNotEmpty(); // neither sealable nor ruined: air has them all
        air.kind = Kind.SOLID;
        air.flatFactor = Spread.of(1);
        PlainFuture solid = PlainModel.future(draft.build(), draft.entries.get(0), 1, 0);
        assertThat(solid.flats()).isEmpty();
    }
}
