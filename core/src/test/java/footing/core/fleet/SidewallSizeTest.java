package footing.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SidewallSizeTest {
    /** The slash form's example (11 in) is one read in operator manuals. */
    @ParameterizedTest
    @CsvSource({
        "24x12.00-12, 24, 12, 12",
        "13X6.50-6, 13, 6.5, 6",
        "18 x 8.5 - 8, 18, 8.5, 8",
        "24x12 N12, 24, 12, 12",
        "24x12\u201312, 24, 12, 12",
        "4.10/3.50-4, 11, 4.1, 4",
    })
    void of_sidewall_isRead(String text, double diameter, double width, double rim) {
        SidewallSize size = SidewallSize.of(text).orElseThrow();

        assertThat(size.diameter()).isCloseTo(diameter * 0.0254, within(1e-12));
        assertThat(size.width()).isCloseTo(width * 0.0254, within(1e-12));
        assertThat(size.rim()).isCloseTo(rim * 0.0254, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "big", "24x12", "12x24-6", "10x4-12", "24x12-0", "24x12-12 turf", "999x3-2"})
    void of_noSize_isEmpty(String text) {
        assertThat(SidewallSize.of(text)).isEmpty();
    }

    @Test
    void facts_ofATreatedTire_keepTheWheelNotTheMass() {
        Measures air =
                Measures.of(java.util.Map.of(Measure.BOLTS, 5.0, Measure.MASS, 19.0, Measure.LOADED_RADIUS, 0.28));
        Case.Assembly treated =
                new Case.Assembly("air", Kind.AIR, Position.DRIVE, "24x12-12", null, null, Numbers.NONE, air);
        Case.Assembly foam = new Case.Assembly("foam", Kind.FOAM, Position.DRIVE, null, "air", Numbers.NONE);
        Case.Assembly sealed = new Case.Assembly("sealed", Kind.SEALANT, Position.DRIVE, null, "air", Numbers.NONE);

        WheelFacts facts = WheelFacts.of(foam, treated);
        assertThat(facts.get(Measure.BOLTS)).hasValue(5);
        assertThat(facts.has(Measure.MASS)).isFalse();
        assertThat(facts.has(Measure.LOADED_RADIUS)).isFalse();
        assertThat(facts.isNominal(Measure.DIAMETER)).isTrue();
        assertThat(WheelFacts.of(sealed, treated).get(Measure.LOADED_RADIUS)).hasValue(0.28);
    }
}
