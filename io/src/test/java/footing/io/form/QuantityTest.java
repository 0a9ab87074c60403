package footing.io.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {
    /** Factors printed in NIST SP 811 (2008), appendix B.8, to seven digits (half a unit of the last: up to 5e-7); km/h and minutes by definition. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, in, 0.0254",
        "LENGTH, ft, 0.3048",
        "LENGTH, mm, 0.001",
        "LENGTH, cm, 0.01",
        "MASS, lb, 0.4535924",
        "PRESSURE, psi, 6894.757",
        "PRESSURE, kPa, 1000",
        "PRESSURE, bar, 100000",
        "SPEED, mph, 0.44704",
        "SPEED, km/h, 0.2777778",
        "STIFFNESS, lb/in, 175.1268",
        "STIFFNESS, N/mm, 1000",
        "TIME, min, 0.01666667",
    })
    void toOwn_one_isThePublishedFactor(Quantity quantity, String unit, double factor) {
        assertThat(quantity.unit(unit).orElseThrow().toOwn(1)).isCloseTo(factor, within(5e-7 * factor));
    }

    @ParameterizedTest
    @EnumSource
    void fromOwn_toOwn_returnsTheValue(Quantity quantity) {
        for (Quantity.Unit unit : quantity.units()) {
            for (double x : new double[] {0, 1, 13, 24.5, 1e6}) {
                assertThat(unit.fromOwn(unit.toOwn(x))).isCloseTo(x, within(1e-12 * x));
            }
        }
    }

    @Test
    void toOwn_minutes_areTheNearestFraction() {
        assertThat(Quantity.TIME.unit("min").orElseThrow().toOwn(35)).isEqualTo(35 / 60.0);
    }

    @ParameterizedTest
    @EnumSource
    void example_ofEachQuantity_passesItsOwnForm(Quantity quantity) {
        Problems problems = new Problems("x");
        MeasureForm form = MeasureForm.of(quantity);

        form.check(new Node.Scalar(1, form.example(), true), At.TOP, problems);

        assertThat(problems.errors()).isEmpty();
    }
}
