package footing.core.follow;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.SmallCase;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.Followed;
import footing.core.records.Log;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What came, held against the forecast of one rider on air: four flats a season of 450 h were stated. */
class FollowUpTest {
    private static final String RIDER = SmallCase.RIDER;
    private static Forecast asItIs;
    private static Forecast firm;

    @BeforeAll
    static void forecast() {
        asItIs = ForecasterTest.asItIs();
        Answer answer = ForecasterTest.answer(SmallCase.build());
        ResolvedMachine.Entry entry = answer.machines().get(0).machine().entries().stream()
                .filter(e -> e.id().equals("firm"))
                .findFirst()
                .orElseThrow();
        firm = Forecaster.of(answer, Map.of(RIDER, entry), LocalDate.of(2027, 3, 16));
    }

    private static LogRows flats(int n, double minutes, double cost) {
        LogRows rows = new LogRows().begin("2027-03-15", RIDER, 300);
        for (int i = 0; i < n; i++) {
            rows.flat("2027-0" + (4 + i % 5) + "-1" + i % 9, RIDER, -1, minutes, cost);
        }
        return rows.reading("2027-11-15", RIDER, 750);
    }

    private static Standing standing(FollowUp up, Followed what) {
        return up.machines().get(0).lines().stream()
                .filter(l -> l.what() == what)
                .findFirst()
                .orElseThrow()
                .standing();
    }

    @Test
    void of_fourFlatsInASeason_isAsExpected() {
        FollowUp up = FollowUp.of(asItIs, flats(4, 40, 12).log());
        assertThat(up.machines().get(0).happened().hours()).isEqualTo(450);
        assertThat(up.machines().get(0).lines().get(0).came()).isEqualTo(4);
        assertThat(standing(up, Followed.FLATS)).isEqualTo(Standing.AS_EXPECTED);
        assertThat(up.machines().get(0).late()).isFalse();
    }

    @Test
    void of_twentyFlats_isMore() {
        assertThat(standing(FollowUp.of(asItIs, flats(20, 40, 12).log()), Followed.FLATS))
                .isEqualTo(Standing.MORE);
    }

    @Test
    void of_noFlatsInTwoSeasons_isLess() {
        Log log = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .reading("2028-11-15", RIDER, 1200)
                .log();
        assertThat(standing(FollowUp.of(asItIs, log), Followed.FLATS)).isEqualTo(Standing.LESS);
    }

    @Test
    void of_fewHours_isTooEarly() {
        Log log = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .reading("2027-04-10", RIDER, 330)
                .log();
        assertThat(standing(FollowUp.of(asItIs, log), Followed.FLATS)).isEqualTo(Standing.TOO_EARLY);
    }

    @Test
    void of_minutesLeftOut_cantTellTheTimeDown() {
        FollowUp up = FollowUp.of(asItIs, flats(4, -1, 12).log());
        assertThat(standing(up, Followed.DOWN_HOURS)).isEqualTo(Standing.NOT_WRITTEN);
        assertThat(standing(up, Followed.FLATS)).isEqualTo(Standing.AS_EXPECTED);
    }

    @Test
    void of_costsLeftOutButAlreadyTooMuch_isMore() {
        Log log = flats(3, 40, -1).flat("2027-10-01", RIDER, -1, 40, 9000).log();
        assertThat(standing(FollowUp.of(asItIs, log), Followed.PAID)).isEqualTo(Standing.MORE);
    }

    @Test
    void of_setsPutOn_countsAllButTheChangeAtTheStart() {
        Log log = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-15", RIDER, 300, Spot.DRIVE, "firm-drive")
                .fit("2027-06-15", RIDER, 520, Spot.CASTER, "air-caster")
                .reading("2027-11-15", RIDER, 750)
                .log();
        FollowUp.Machine m = FollowUp.of(firm, log).machines().get(0);
        assertThat(m.came().get(m.came().size() - 1).of(Followed.SETS)).isEqualTo(1);
        assertThat(m.others()).isEmpty();
    }

    private static double setsPutOn(FollowUp up) {
        List<Step> came = up.machines().get(0).came();
        return came.get(came.size() - 1).of(Followed.SETS);
    }

    @Test
    void of_fitOnTheForecastsOwnDay_isTheSetAlreadyOn() {
        LogRows rows = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-15", RIDER, 300, Spot.DRIVE, "air-drive")
                .fit("2027-03-15", RIDER, 300, Spot.CASTER, "air-caster")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(asItIs, rows.log()))).isZero();
        rows.fit("2027-08-15", RIDER, 600, Spot.DRIVE, "air-drive");
        assertThat(setsPutOn(FollowUp.of(asItIs, rows.log()))).isEqualTo(1);
    }

    @Test
    void of_setFromBeforeAndThePlannedOneOnOneDay_countsNeither() {
        LogRows rows = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-15", RIDER, 300, Spot.DRIVE, "air-drive")
                .fit("2027-03-15", RIDER, 300.1, Spot.DRIVE, "firm-drive")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(firm, rows.log()))).isZero();
        rows.fit("2027-08-15", RIDER, 600, Spot.DRIVE, "firm-drive");
        assertThat(setsPutOn(FollowUp.of(firm, rows.log()))).isEqualTo(1);
    }

    @Test
    void of_fitOnTheDayItWasMade_isTheSetAlreadyOnUnlessItHasRun() {
        LogRows rested = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-16", RIDER, 300, Spot.DRIVE, "air-drive")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(asItIs, rested.log()))).isZero();
        LogRows run = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-16", RIDER, 306, Spot.DRIVE, "air-drive")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(asItIs, run.log()))).isEqualTo(1);
    }

    @Test
    void of_recordingBegunLate_theSetsWrittenDownThenWereOn() {
        LogRows rows = new LogRows()
                .begin("2027-07-01", RIDER, 500)
                .fit("2027-07-01", RIDER, 500, Spot.DRIVE, "air-drive")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(asItIs, rows.log()))).isZero();
    }

    @Test
    void of_anotherSetOnTheFirstDay_isCounted() {
        LogRows rows = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-03-15", RIDER, 300, Spot.DRIVE, "foam-drive")
                .reading("2027-11-15", RIDER, 750);
        assertThat(setsPutOn(FollowUp.of(asItIs, rows.log()))).isEqualTo(1);
    }

    @Test
    void of_otherSetsThanForecast_areNamed() {
        Log log = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .fit("2027-05-15", RIDER, 400, Spot.DRIVE, "foam-drive")
                .reading("2027-11-15", RIDER, 750)
                .log();
        assertThat(FollowUp.of(firm, log).machines().get(0).others()).containsExactly("foam-drive");
    }

    @Test
    void of_recordingBegunLate_countsFromThen() {
        Log log = new LogRows()
                .begin("2027-07-01", RIDER, 500)
                .flat("2027-08-01", RIDER, 560, 20, 4)
                .reading("2027-11-15", RIDER, 750)
                .log();
        FollowUp.Machine m = FollowUp.of(asItIs, log).machines().get(0);
        assertThat(m.late()).isTrue();
        assertThat(m.happened().hours()).isEqualTo(250);
        assertThat(m.came().get(1).hours()).isEqualTo(60);
    }

    @Test
    void of_machineReplacedItsMeter_hoursRunOn() {
        Log log = new LogRows()
                .begin("2027-03-15", RIDER, 300)
                .reading("2027-07-01", RIDER, 500)
                .fit("2027-07-02", RIDER, 0, Spot.METER, "")
                .reading("2027-11-15", RIDER, 250)
                .log();
        assertThat(FollowUp.of(asItIs, log).machines().get(0).happened().hours())
                .isEqualTo(450);
    }

    @Test
    void of_logEndedBefore_isSilentAndHasNoFleet() {
        Log log = new LogRows()
                .begin("2026-03-15", RIDER, 0)
                .reading("2026-11-15", RIDER, 290)
                .log();
        FollowUp up = FollowUp.of(asItIs, log);
        assertThat(up.silent()).containsExactly(RIDER);
        assertThat(up.machines()).isEmpty();
        assertThat(up.fleet()).isEmpty();
    }

    @Test
    void fleet_oneMachine_tellsTheSame() {
        FollowUp up = FollowUp.of(asItIs, flats(4, 40, 12).log());
        FollowUp.Fleet fleet = up.fleet().orElseThrow();
        FollowUp.Machine m = up.machines().get(0);
        for (int i = 0; i < fleet.lines().size(); i++) {
            assertThat(fleet.lines().get(i).came()).isEqualTo(m.lines().get(i).came());
        }
        assertThat(fleet.came().get(fleet.came().size() - 1).hours()).isEqualTo(450);
    }
}
