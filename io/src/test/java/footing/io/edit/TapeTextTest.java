package footing.io.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Measure;
import footing.core.fleet.Physical;
import footing.io.form.At;
import footing.io.form.BodyForm;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TapeTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "WHEELBASE | 53.7 | false | 53.7 in",
                "WHEELBASE | 1364 | true | 1364 mm",
                "WHEELBASE | 53 11/16 | false | 53.6875 in",
                "WHEELBASE | 53-1/2\" | true | 53.5 in",
                "DECK_HEIGHT | 3 1/4 in | false | 3.25 in",
                "DECK_HEIGHT | 7/8 | false | 0.875 in",
                "DECK_HEIGHT | 3.5” | false | 3.5 in",
                "OFFSET | -3/16 | false | -0.1875 in",
                "OFFSET | 0 | false | 0 in",
                "THREAD_PITCH | 1.5 | false | 1.5 mm",
                "PRESSURE | 12 | false | 12 psi",
                "PRESSURE | 0.9 bar | false | 0.9 bar",
                "DRIVE_LEFT | 236 | true | 236 kg",
                "TOP_SPEED | 12 | false | 12 mph",
                "STIFFNESS | 640 | false | 640 lb/in",
                "FRONT_SHARE | 34 | false | 34 %",
                "FRONT_SHARE | 0.34 | false | 0.34",
                "BOLTS | 5 | false | 5",
                "PRINT_SHAPE | 4 | true | 4",
                "WHEELBASE | about 54 | false | about 54",
                "WHEELBASE | 3 1/5 | false | 3 1/5",
                "MASS | 1/2 | false | 1/2",
            })
    void whole_asTyped_getsTheUnitOfTheCase(Measure measure, String typed, boolean si, String expected) {
        assertThat(TapeText.whole(measure, typed, si)).isEqualTo(expected);
    }

    /** Whatever a measure is shown as is read back as the same value. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void written_anyMeasure_isReadBack(Measure measure) {
        double value = measure.range().whole() ? 5 : measure.physical() == Physical.SHARE ? 0.345 : 0.0127;
        if (!measure.range().contains(value)) {
            value = measure.range().most() / 3;
        }
        for (boolean si : new boolean[] {false, true}) {
            String shown = TapeText.written(measure, value, si);
            Problems problems = new Problems("x");
            Double read = new BodyForm(measure).read(new Node.Scalar(1, shown, true), At.TOP, problems);

            assertThat(problems.errors()).isEmpty();
            assertThat(Objects.requireNonNull(read)).isCloseTo(value, within(1e-9 * Math.abs(value)));
        }
    }

    @Test
    void unit_everyLength_followsTheCaseButTheThread() {
        assertThat(TapeText.unit(Measure.GATE, false)).isEqualTo("in");
        assertThat(TapeText.unit(Measure.GATE, true)).isEqualTo("mm");
        assertThat(TapeText.unit(Measure.THREAD_PITCH, false)).isEqualTo("mm");
    }
}
