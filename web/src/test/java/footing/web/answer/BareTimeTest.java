package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Spread;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BareTimeTest {
    @ParameterizedTest
    @CsvSource({
        "DELAY, 0.5, 35, 35 min",
        "DELAY, 0.5, 2, 2",
        "DELAY, 0.5, 35 min, 35 min",
        "DELAY, 2, 3, 3 h",
        "DELAY, 2, 35, 35",
        "WAGE, 20, 21, 21"
    })
    void completed_bareNumber_takesTheUnitOfItsBoxIfItCanHardlyMeanAnother(
            Key key, double now, String typed, String whole) {
        InForce number = new InForce(Input.of(key, "north"), Spread.of(now), Origin.STATED, "");

        assertThat(BareTime.completed(number, Map.of("value", typed))).containsEntry("value", whole);
    }
}
