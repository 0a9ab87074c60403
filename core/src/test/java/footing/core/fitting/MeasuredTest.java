package footing.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.SmallCase;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.quantity.Length;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTest {
    private static Measured tips(double... inches) {
        return new Measured(
                Length.ofInches(inches[0]),
                Length.ofInches(inches[1]),
                Length.ofInches(inches[2]),
                Length.ofInches(inches[3]));
    }

    private static String missed(Measured tips, @Nullable Length height, @Nullable Length rake) {
        return tips.against(height, rake).stream()
                .filter(j -> !j.reached())
                .map(j -> j.what().name())
                .collect(Collectors.joining(" "));
    }

    @Test
    void measured_level_isReached() {
        Measured tips = tips(3.25, 3.25, 3.0625, 3.0625);

        assertThat(tips.rake().inches()).isCloseTo(0.1875, within(1e-12));
        assertThat(tips.height().inches()).isCloseTo(3.15625, within(1e-12));
        assertThat(missed(tips, Length.ofInches(3.15), Length.ofInches(0.19))).isEmpty();
        assertThat(missed(tips, null, null)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "3.3, 3.1, 3.0, 3.0, REAR_SIDES",
        "3.25, 3.25, 3.2, 3.0, FRONT_SIDES",
        "3.0, 3.0, 3.1, 3.1, RAKE",
        "3.4, 3.4, 3.0, 3.0, RAKE",
        "3.25, 3.125, 3.0, 3.0, ''",
    })
    void measured_offByMore_saysWhere(double a, double b, double c, double d, String expected) {
        assertThat(missed(tips(a, b, c, d), null, null)).isEqualTo(expected);
    }

    @Test
    void measured_againstTargets_saysWhichWasMissed() {
        Measured tips = tips(3.25, 3.25, 3.0625, 3.0625);

        assertThat(missed(tips, Length.ofInches(3.5), Length.ofInches(0.05))).isEqualTo("RAKE HEIGHT");
        assertThat(tips.against(Length.ofInches(3.2), null)).hasSize(4);
    }

    @Test
    void measured_belowTheFloor_isRefused() {
        assertThatThrownBy(() -> tips(3, 3, -1, 3)).hasMessageContaining("above the floor");
        assertThatThrownBy(() -> tips(3, Double.NaN, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Turns of a thread of 1.5 mm on the machine of {@link SetUpTest} with a half-inch taller drive: 6.3 and 2.8. */
    private static List<Measured.Judgment> kept(@Nullable String on, double rearTurns) {
        Measures measures = SetUpTest.decked()
                .with(Measure.TURNED_REAR, rearTurns)
                .with(Measure.TURNED_FRONT, 2.8)
                .with(Measure.FITTED_REAR_LEFT, 3.34 * Bay.INCH)
                .with(Measure.FITTED_REAR_RIGHT, 3.34 * Bay.INCH)
                .with(Measure.FITTED_FRONT_LEFT, 3.16 * Bay.INCH)
                .with(Measure.FITTED_FRONT_RIGHT, 3.16 * Bay.INCH);
        SetUp setUp = SetUpTest.setUp(measures, Bay.drive().with(Measure.LOADED_RADIUS, 11.6 * Bay.INCH), Bay.caster());
        return Measured.kept(SmallCase.measured(measures, on), setUp);
    }

    private static List<Measured.What> missed(List<Measured.Judgment> all) {
        return all.stream()
                .filter(j -> !j.reached())
                .map(Measured.Judgment::what)
                .toList();
    }

    @Test
    void kept_asDue_isReached() {
        assertThat(kept("new", 6.3)).hasSize(6);
        assertThat(missed(kept("new", 6.3))).isEmpty();
        assertThat(kept(null, 6.3)).hasSize(6);
    }

    @Test
    void kept_hangersTurnedTheOtherWay_areMissed() {
        assertThat(missed(kept("new", -6.3))).containsExactly(Measured.What.REAR_HANGERS);
        assertThat(kept("new", -6.3).get(0).value().millimeters()).isCloseTo(-9.45, within(1e-9));
    }

    @Test
    void kept_measuredWithOthersOn_isNotJudged() {
        assertThat(kept("others", 6.3)).isEmpty();
    }
}
