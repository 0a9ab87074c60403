package footing.io.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScaleTest {
    private static Figure ranges(double from, double mean, double to) {
        return new Figure(
                "some",
                "Some",
                "",
                Kind.RANGES,
                Axis.named("row", List.of("a")),
                Axis.of("money", Unit.MONEY),
                List.of(new Series("x", Shape.SPAN, Tone.GAIN, Stroke.SOLID, List.of(Point.range(0, mean, from, to)))),
                List.of());
    }

    @Test
    void at_endsAndZero_lieInsideInOrder() {
        Scale scale = Scale.of(ranges(-300, 400, 1700));
        assertThat(scale.at(-300)).isGreaterThan(0);
        assertThat(scale.at(0)).isBetween(scale.at(-300), scale.at(1700));
        assertThat(scale.at(1700)).isLessThan(Scale.WIDTH);
    }

    @Test
    void ticks_rangeAroundZero_areRoundWithZeroAmongThem() {
        assertThat(Scale.of(ranges(-300, 400, 1700)).ticks()).containsExactly(0.0, 500.0, 1000.0, 1500.0);
    }

    @Test
    void of_everythingZero_hasAWidth() {
        Scale scale = Scale.of(ranges(0, 0, 0));
        assertThat(scale.at(0)).isCloseTo(500, within(500.0));
    }

    @Test
    void curve_likelyValue_liesBetweenTheOuterTwo() {
        Curve curve = Curve.of(new Metalog(3, 6, 11, Bounds.POSITIVE));
        assertThat(curve.lowAt()).isBetween(0.0, curve.likelyAt());
        assertThat(curve.highAt()).isBetween(curve.likelyAt(), 100.0);
        assertThat(curve.path()).startsWith("M0 24").endsWith("L100 24").doesNotContain("NaN");
    }

    @Test
    void figure_placeWithoutName_isRefused() {
        assertThatThrownBy(() -> new Figure(
                        "some",
                        "Some",
                        "",
                        Kind.BARS,
                        Axis.named("row", List.of("a")),
                        Axis.of("money", Unit.MONEY),
                        List.of(new Series("x", Shape.BAR, Tone.GAIN, Stroke.SOLID, List.of(Point.of(1, 2)))),
                        List.of()))
                .hasMessageContaining("no name for place 1");
    }

    @Test
    void point_notFinite_isRefused() {
        assertThatThrownBy(() -> Point.of(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Point.of(1, Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }
}
