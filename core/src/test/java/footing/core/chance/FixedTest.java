package footing.core.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class FixedTest {
    @Test
    void draw_anyUniform_isTheValue() {
        Spread fixed = Spread.of(7.5);
        assertThat(fixed.isFixed()).isTrue();
        assertThat(fixed.draw(0.0001)).isEqualTo(7.5).isEqualTo(fixed.draw(0.9999));
        assertThat(fixed.mean()).isEqualTo(7.5).isEqualTo(fixed.likely());
    }

    @Test
    void cumulative_aroundTheValue_isAStep() {
        assertThat(Spread.of(7.5).cumulative(Math.nextDown(7.5))).isZero();
        assertThat(Spread.of(7.5).cumulative(7.5)).isEqualTo(1);
    }

    @Test
    void times_factor_multiplies() {
        assertThat(Spread.of(7.5).times(0.2)).isEqualTo(Spread.of(1.5));
    }

    @Test
    void of_noFiniteNumber_isRefused() {
        for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> Spread.of(x));
        }
    }
}
