package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.quantity.Angle;
import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import footing.io.form.At;
import footing.io.form.MeasureForm;
import footing.io.form.Node;
import footing.io.form.Problems;
import footing.io.form.Quantity;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class QuantitiesTest {
    private static final Quantities US = new Quantities(false);
    private static final Quantities SI = new Quantities(true);

    private static double read(Quantity quantity, String text) {
        Problems problems = new Problems("x");
        Double value = new MeasureForm(quantity, true).read(new Node.Scalar(1, text, true), At.TOP, problems);
        return Objects.requireNonNull(value, text);
    }

    @Test
    void shown_eachQuantity_isReadBackAsWhatItWas() {
        for (double x : new double[] {0.01, 0.25, 1, 11.4, 53.7, 120}) {
            assertThat(read(Quantity.LENGTH, US.length(Length.ofInches(x)))).isCloseTo(x * 0.0254, within(0.0002));
            assertThat(read(Quantity.LENGTH, SI.length(Length.ofInches(x)))).isCloseTo(x * 0.0254, within(0.00051));
            assertThat(read(Quantity.MASS, US.mass(Mass.ofPounds(x)))).isCloseTo(x * 0.45359237, within(0.23));
            assertThat(read(Quantity.MASS, SI.mass(Mass.ofPounds(x)))).isCloseTo(x * 0.45359237, within(0.51));
            assertThat(read(Quantity.PRESSURE, US.pressure(Pressure.ofPsi(x)))).isCloseTo(x * 6894.757, within(350.0));
            assertThat(read(Quantity.PRESSURE, SI.pressure(Pressure.ofPsi(x)))).isCloseTo(x * 6894.757, within(510.0));
            assertThat(read(Quantity.SPEED, US.speed(x))).isCloseTo(x, within(0.03));
            assertThat(read(Quantity.SPEED, SI.speed(x))).isCloseTo(x, within(0.03));
        }
    }

    @Test
    void shift_signs_areShown() {
        assertThat(US.shift(Length.ofInches(0.3))).isEqualTo("+0.3 in");
        assertThat(US.shift(Length.ofInches(-0.3))).isEqualTo("-0.3 in");
        assertThat(US.shift(Length.ofInches(-0.001))).isEqualTo("0 in");
        assertThat(SI.shift(Length.ofMillimeters(7.6))).isEqualTo("+8 mm");
    }

    @Test
    void quantities_ofEachType_convertToAndBack() {
        assertThat(Length.ofMillimeters(25.4).inches()).isCloseTo(1, within(1e-12));
        assertThat(Mass.ofPounds(1).newtons()).isCloseTo(4.4482216152605, within(1e-12));
        assertThat(Pressure.ofPsi(1).kilopascals()).isCloseTo(6.894757, within(5e-7));
        assertThat(Angle.ofSlope(1).degrees()).isCloseTo(45, within(1e-12));
        assertThat(new Area(1).squareInches()).isCloseTo(1550.003, within(5e-4));
        assertThat(Quantities.angle(Angle.ofDegrees(12.69))).isEqualTo("12.7 deg");
    }
}
