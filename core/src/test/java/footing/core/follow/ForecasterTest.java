package footing.core.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.SmallCase;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.Followed;
import footing.core.future.Paths;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Forecasts: bands of the futures, one plan a machine. */
class ForecasterTest {
    private static final LocalDate MADE = LocalDate.of(2027, 3, 16);

    static Answer answer(Case stated) {
        return Assessment.answer(stated, Options.usual().quickly().withFutures(2000), Workers.one(), Watch.NOBODY);
    }

    static Forecast asItIs() {
        Answer answer = answer(SmallCase.build());
        ResolvedMachine.Entry carried = answer.machines().get(0).machine().carried();
        return Forecaster.of(answer, Map.of(SmallCase.RIDER, carried), MADE);
    }

    /** Futures of another seed, so of another fate, lie within the band at least as often as it says. */
    @Test
    void bands_futuresOfAnotherSeed_holdFourInFive() {
        Forecast.Machine m = asItIs().machines().get(0);
        ResolvedMachine rider = answer(SmallCase.build()).machines().get(0).machine();
        for (double hour : new double[] {333, 1000, 1999}) {
            Paths others = Paths.of(rider, rider.carried(), 99, 2000, new double[] {0, hour});
            for (Followed what : Followed.values()) {
                Band band = m.bands().at(what, hour);
                int inside = 0;
                for (double came : others.at(what, 1)) {
                    inside += came >= band.low() && came <= band.high() ? 1 : 0;
                }
                // Four standard errors of 2,000 futures below four in five.
                assertThat(inside / 2000.0).as("%s by %s", what, hour).isGreaterThan(0.764);
            }
        }
    }

    /** Money and hours are continuous: their band holds no more than it says, but for the step of the grid. */
    @Test
    void bands_onTheGrid_areNoWiderThanTheySay() {
        Forecast.Machine m = asItIs().machines().get(0);
        ResolvedMachine rider = answer(SmallCase.build()).machines().get(0).machine();
        double hour = m.bands().hours().get(24);
        Paths others = Paths.of(rider, rider.carried(), 99, 2000, new double[] {0, hour});
        Band band = m.bands().at(Followed.DOWN_HOURS, hour);
        int inside = 0;
        for (double came : others.at(Followed.DOWN_HOURS, 1)) {
            inside += came >= band.low() && came <= band.high() ? 1 : 0;
        }
        assertThat(inside / 2000.0).isBetween(0.764, 0.836);
    }

    @Test
    void of_oneMachine_fleetEndsWhereTheMachineDoes() {
        Forecast forecast = asItIs();
        Bands own = forecast.machines().get(0).bands();
        assertThat(forecast.fleet().until()).isEqualTo(own.until());
        for (Followed what : Followed.values()) {
            Band fleet = forecast.fleet().at(what, own.until());
            assertThat(fleet.low()).isCloseTo(own.at(what, own.until()).low(), within(1e-9));
            assertThat(fleet.high()).isCloseTo(own.at(what, own.until()).high(), within(1e-9));
        }
    }

    @Test
    void of_nothingChosen_followsWhatTheAnswerAdvises() {
        Answer answer = answer(SmallCase.build());
        ResolvedMachine.Entry advised = Forecaster.advised(answer.machines().get(0));
        Forecast forecast = Forecaster.of(answer, Map.of(), MADE);
        Forecast.Plan plan = forecast.machines().get(0).plan();
        assertThat(plan.wheels()).isEqualTo(advised.id());
        assertThat(plan.wanted(Position.DRIVE)).isEqualTo(advised.drive());
        assertThat(plan.before(Position.DRIVE)).isEqualTo("air-drive");
        assertThat(forecast.seed()).isEqualTo(answer.seed());
        assertThat(forecast.machines().get(0).hoursNow()).isEqualTo(300);
    }
}
