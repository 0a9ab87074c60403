package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MovesTest {
    private static Moves moves(Key key, Spread value) {
        Numbers machine = Numbers.of(Map.of(Key.HOURS_NOW, Spread.of(1000)));
        return Moves.of(new InForce(Input.of(key, "m"), value, Origin.STATED, ""), machine);
    }

    @Test
    void of_fullWeeksWithTheCrewsOwnUnknown_goesToItsStatedEnds() {
        Moves moves = moves(Key.FULL_LATER, new Metalog(0.2, 0.5, 0.9, Bounds.SHARE));
        assertThat(moves).isEqualTo(new Moves(Spread.of(0.2), Spread.of(0.9)));
    }

    @Test
    void of_lifeThatVaries_scalesAllThreePoints() {
        Moves moves = moves(Key.LIFE, new Metalog(400, 600, 1000, Bounds.POSITIVE));
        assertThat(moves.low()).isEqualTo(new Metalog(320, 480, 800, Bounds.POSITIVE));
        assertThat(moves.high()).isEqualTo(new Metalog(480, 720, 1200, Bounds.POSITIVE));
    }

    @Test
    void of_negativeInflation_keepsLowBelowHigh() {
        Moves moves = moves(Key.INFLATION, Spread.of(-0.05));
        assertThat(moves.low().likely()).isLessThan(-0.05);
        assertThat(moves.high().likely()).isGreaterThan(-0.05);
    }

    @Test
    void of_tradeCloseToNow_neverFallsBehindTheMeter() {
        Moves moves = moves(Key.KEEP_UNTIL, Spread.of(1000.5));
        assertThat(moves.low().likely()).isGreaterThan(1000).isLessThan(1000.5);
    }

    @Test
    void of_shareNearItsEnd_isClamped() {
        assertThat(moves(Key.CREW_OUTPUT, Spread.of(0.9)).high().likely()).isEqualTo(1);
    }
}
