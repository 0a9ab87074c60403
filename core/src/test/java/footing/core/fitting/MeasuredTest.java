package footing.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
        assertThat(List.of(Measured.What.values())).hasSize(4);
    }

    @Test
    void measured_belowTheFloor_isRefused() {
        assertThatThrownBy(() -> tips(3, 3, -1, 3)).hasMessageContaining("above the floor");
        assertThatThrownBy(() -> tips(3, Double.NaN, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    }
}
