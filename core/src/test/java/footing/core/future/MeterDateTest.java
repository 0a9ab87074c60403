package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.core.answer.SmallCase;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class MeterDateTest {
    private static final ResolvedMachine RIDER =
            Resolver.resolve(SmallCase.build()).get(0);

    @Test
    void of_noHours_isTheFirstDayOfTheSeason() {
        assertThat(MeterDate.of(RIDER, 0)).isEqualTo(LocalDate.of(2027, 4, 1));
    }

    @Test
    void of_aWholeSeason_isItsLastDay() {
        assertThat(MeterDate.of(RIDER, RIDER.hoursPerYear())).isEqualTo(LocalDate.of(2027, 11, 15));
        assertThat(MeterDate.of(RIDER, RIDER.hoursPerYear() + 1)).isEqualTo(LocalDate.of(2028, 4, 1));
    }

    @Test
    void of_hoursOutsideWhatIsLeft_isRefused() {
        assertThatThrownBy(() -> MeterDate.of(RIDER, RIDER.hoursLeft() + 1)).hasMessageContaining("rider");
        assertThatThrownBy(() -> MeterDate.of(RIDER, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
