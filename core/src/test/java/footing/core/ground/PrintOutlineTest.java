package footing.core.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintOutlineTest {
    /** Points of a super-ellipse, every half degree of its parameter, turned about its middle. */
    private static List<PrintOutline.Point> border(double length, double width, double shape, double turn) {
        List<PrintOutline.Point> points = new ArrayList<>();
        for (int i = 0; i < 1440; i++) {
            double t = 2 * Math.PI * i / 1440;
            double along = Math.signum(Math.cos(t)) * Math.pow(Math.abs(Math.cos(t)), 2 / shape) * length / 2;
            double across = Math.signum(Math.sin(t)) * Math.pow(Math.abs(Math.sin(t)), 2 / shape) * width / 2;
            points.add(new PrintOutline.Point(
                    3 + along * Math.cos(turn) - across * Math.sin(turn),
                    -2 + along * Math.sin(turn) + across * Math.cos(turn)));
        }
        return points;
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0.25, 2, 0", "0.15, 0.25, 3, 0.1", "0.2, 0.12, 4, -0.3", "0.11, 0.3, 8, 0.5", "0.2, 0.2, 2, 0.2"
    })
    void of_superEllipse_givesBackItsMeasures(double length, double width, double shape, double turn) {
        PrintOutline found = PrintOutline.of(border(length, width, shape, turn), 0);

        // The area to what chords of half a degree cut off, the sides to half a degree of turn.
        assertThat(found.area()).isCloseTo(SuperEllipse.area(length, width, shape), within(3e-4 * length * width));
        assertThat(found.length()).isCloseTo(length, within(0.01 * length));
        assertThat(found.width()).isCloseTo(width, within(0.01 * width));
        assertThat(found.shape()).isCloseTo(shape, within(0.06 * shape));
        assertThat(found.misfit()).isLessThan(0.01);
    }

    @Test
    void of_tireRolledAcross_swapsLengthAndWidth() {
        PrintOutline found = PrintOutline.of(border(0.15, 0.25, 3, 0), Math.PI / 2);

        assertThat(found.length()).isCloseTo(0.25, within(0.001));
        assertThat(found.width()).isCloseTo(0.15, within(0.001));
    }

    @Test
    void of_oneSplash_hardlyMovesTheSides() {
        List<PrintOutline.Point> border = border(0.15, 0.25, 3, 0);
        border.set(0, new PrintOutline.Point(3 + 0.10, -2));

        assertThat(PrintOutline.of(border, 0).length()).isCloseTo(0.15, within(0.003));
    }

    @Test
    void of_halfMoon_isFarFromAnyPrint() {
        List<PrintOutline.Point> border = new ArrayList<>();
        for (int i = 0; i <= 180; i++) {
            border.add(new PrintOutline.Point(0.1 * Math.cos(Math.toRadians(i)), 0.1 * Math.sin(Math.toRadians(i))));
        }
        for (int i = 180; i >= 0; i--) {
            border.add(new PrintOutline.Point(0.1 * Math.cos(Math.toRadians(i)), 0.05 * Math.sin(Math.toRadians(i))));
        }

        assertThat(PrintOutline.of(border, 0).misfit()).isGreaterThan(0.1);
    }

    @Test
    void of_nothingEnclosed_isRefused() {
        List<PrintOutline.Point> line = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            line.add(new PrintOutline.Point(i, 0));
        }

        assertThatThrownBy(() -> PrintOutline.of(line, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PrintOutline.of(List.of(), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"2", "2.5", "3", "4", "6", "10"})
    void shapeOf_fullnessOfAShape_givesItBack(double shape) {
        assertThat(SuperEllipse.shapeOf(SuperEllipse.fullness(shape))).isCloseTo(shape, within(1e-9));
    }
}
