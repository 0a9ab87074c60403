package footing.core.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The three-point distribution against its definition (Keelin 2016). Shapes are derived, from mild to the edge. */
class MetalogTest {
    private static final List<Double> POSITIONS = List.of(0.1666000001, 0.2, 0.35, 0.5, 0.65, 0.8, 0.8333999999);

    static Stream<Metalog> shapes() {
        Stream<Metalog> positive = Stream.of(1.0001, 1.2, 3.0, 50.0, 1e6)
                .flatMap(ratio -> POSITIONS.stream().map(p -> at(p, 0.7, 0.7 * ratio, Bounds.POSITIVE)));
        Stream<Metalog> tiny = POSITIONS.stream().map(p -> at(p, 1e-9, 1e-3, Bounds.POSITIVE));
        Stream<Metalog> shares = Stream.of(
                        new double[] {0.1, 0.9}, new double[] {0.001, 0.999}, new double[] {0.4, 0.41})
                .flatMap(ends -> POSITIONS.stream().map(p -> at(p, ends[0], ends[1], Bounds.SHARE)));
        return Stream.of(positive, tiny, shares).flatMap(s -> s);
    }

    private static Metalog at(double position, double low, double high, Bounds bounds) {
        return new Metalog(low, Metalog.valueAt(position, low, high, bounds), high, bounds);
    }

    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(MetalogTest.class, "metalog.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void metalog_referenceValues_areMet(ReferenceValue line) {
        Bounds bounds = line.whole(3) == 1 ? Bounds.SHARE : Bounds.POSITIVE;
        Metalog m = new Metalog(line.number(0), line.number(1), line.number(2), bounds);
        double actual = line.function().equals("mean") ? m.mean() : m.quantile(line.number(4));
        assertThat(actual / line.expected()).as(line.toString()).isCloseTo(1, Offset.offset(line.tolerance()));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void quantile_atTenFiftyNinety_givesTheStatedValues(Metalog m) {
        assertThat(m.quantile(0.1)).isCloseTo(m.low(), within(1e-13 * m.low()));
        assertThat(m.quantile(0.5)).isCloseTo(m.likely(), within(1e-13 * m.likely()));
        assertThat(m.quantile(0.9)).isCloseTo(m.high(), within(1e-13 * m.high()));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void quantile_overAllOfZeroToOne_increasesStrictly(Metalog m) {
        double before = m.quantile(1e-6);
        for (int i = 1; i < 2000; i++) {
            double here = m.quantile(i / 2000.0);
            assertThat(here).as("at %s", i / 2000.0).isGreaterThan(before);
            before = here;
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void mean_againstAFineRiemannSum_agrees(Metalog m) {
        int steps = 1_000_000;
        double width = (Metalog.MOST_Y - Metalog.LEAST_Y) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += m.quantile(Metalog.LEAST_Y + (i + 0.5) * width);
        }
        double ends = Metalog.LEAST_Y * (m.quantile(Metalog.LEAST_Y) + m.quantile(Metalog.MOST_Y));
        double riemann = sum * width + ends;
        assertThat(m.mean()).isCloseTo(riemann, within(1e-7 * riemann));
    }

    /** The error allowed is that of x itself, an ulp of its transform over the slope there, and of the search. */
    @ParameterizedTest
    @MethodSource("shapes")
    void cumulative_ofAQuantile_givesTheShareBack(Metalog m) {
        for (double y : new double[] {1e-9, 1e-4, 0.005, 0.1, 0.3, 0.5, 0.77, 0.9, 0.995, 0.9999}) {
            double x = m.quantile(y);
            double ofShare = m.bounds() == Bounds.SHARE ? 1 / (1 - x) : 1;
            double rounding = Math.ulp(1.0) * (2 + Math.abs(m.bounds().transform(x)) + ofShare);
            assertThat(m.cumulative(x)).as("at %s", y).isCloseTo(y, within(4 * rounding / slope(m, y) + 2e-15));
        }
    }

    /** Derivative of the transformed quantile (derived). */
    private static double slope(Metalog m, double y) {
        double l = m.bounds().transform(m.low());
        double h = m.bounds().transform(m.high());
        double skew = (h + l - 2 * m.bounds().transform(m.likely())) / (0.8 * Math.log(9));
        double steady = (h - l) / (2 * Math.log(9));
        return (steady + skew * (y - 0.5)) / (y * (1 - y)) + skew * Math.log(y / (1 - y));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void cumulative_outsideTheBounds_isZeroOrOne(Metalog m) {
        assertThat(m.cumulative(0)).isZero();
        assertThat(m.cumulative(-3)).isZero();
        assertThat(m.cumulative(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(m.cumulative(m.bounds() == Bounds.SHARE ? 1 : 1e300)).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void draw_beyondTheClip_staysThere(Metalog m) {
        assertThat(m.draw(1e-12)).isEqualTo(m.quantile(0.005)).isEqualTo(m.draw(0.005));
        assertThat(m.draw(1 - 1e-12)).isEqualTo(m.quantile(0.995)).isEqualTo(m.draw(0.995));
        assertThat(m.draw(0.3)).isEqualTo(m.quantile(0.3));
    }

    @ParameterizedTest
    @CsvSource({
        "0.16659, POSITIVE, false", "0.16661, POSITIVE, true", "0.83339, POSITIVE, true", "0.83341, POSITIVE, false",
        "0.16659, SHARE, false", "0.16661, SHARE, true", "0.83339, SHARE, true", "0.83341, SHARE, false"
    })
    void metalog_likelyAtTheEdge_isFeasibleOnlyInside(double position, Bounds bounds, boolean feasible) {
        double likely = Metalog.valueAt(position, 0.1, 0.9, bounds);
        assertThat(Metalog.position(0.1, likely, 0.9, bounds)).isCloseTo(position, within(1e-12));
        if (feasible) {
            assertThat(new Metalog(0.1, likely, 0.9, bounds).likely()).isEqualTo(likely);
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> new Metalog(0.1, likely, 0.9, bounds));
        }
    }

    @ParameterizedTest
    @EnumSource(Bounds.class)
    void metalog_valuesThatCanNotBe_areRefused(Bounds bounds) {
        double[][] wrong = {
            {0, 0.4, 0.9},
            {-1, 0.4, 0.9},
            {0.4, 0.4, 0.9},
            {0.4, 0.9, 0.9},
            {0.9, 0.4, 0.1},
            {0.1, 0.9, 0.4},
            {Double.NaN, 0.4, 0.9},
            {0.1, Double.NaN, 0.9},
            {0.1, 0.4, Double.NaN},
            {0.1, 0.4, Double.POSITIVE_INFINITY},
        };
        for (double[] w : wrong) {
            assertThatIllegalArgumentException().isThrownBy(() -> new Metalog(w[0], w[1], w[2], bounds));
        }
        assertThat(new Metalog(0.1, 0.4, 0.9, bounds).mean()).isBetween(0.1, 0.9);
    }

    @Test
    void metalog_shareOfAllOrMore_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Metalog(0.1, 0.4, 1, Bounds.SHARE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Metalog(0.1, 0.4, 1.2, Bounds.SHARE));
        assertThat(new Metalog(0.1, 0.4, 1.2, Bounds.POSITIVE).high()).isEqualTo(1.2);
    }

    @Test
    void quantile_outsideZeroToOne_isRefused() {
        Metalog m = new Metalog(3, 6, 11, Bounds.POSITIVE);
        for (double y : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> m.quantile(y));
        }
    }

    @Test
    void times_factor_scalesEveryDrawAndTheMean() {
        Metalog m = new Metalog(3, 6, 11, Bounds.POSITIVE);
        for (double factor : new double[] {1e-3, 0.8, 1, 1.2, 10}) {
            Spread scaled = m.times(factor);
            assertThat(scaled.mean()).isCloseTo(factor * m.mean(), within(1e-13 * factor * m.mean()));
            for (double y : new double[] {0.001, 0.2, 0.5, 0.9, 0.999}) {
                assertThat(scaled.draw(y)).isCloseTo(factor * m.draw(y), within(1e-13 * factor * m.draw(y)));
            }
        }
        assertThat(m.times(0)).isEqualTo(Spread.of(0));
    }

    /** Rounding of the scaled values must not push a feasible shape over the edge. */
    @Test
    void times_shapeAtTheEdge_staysFeasible() {
        for (double position : new double[] {Metalog.LEAST_POSITION, Metalog.MOST_POSITION}) {
            Metalog m = atEdge(position);
            for (int i = 1; i <= 2000; i++) {
                double factor = i * 0.0049;
                assertThat(m.times(factor).likely()).isCloseTo(factor * m.likely(), within(1e-12));
            }
        }
    }

    /** The likely value nearest the edge that is still accepted. */
    private static Metalog atEdge(double position) {
        double likely = Metalog.valueAt(position, 2, 12, Bounds.POSITIVE);
        for (int i = 0; i < 100; i++) {
            double p = Metalog.position(2, likely, 12, Bounds.POSITIVE);
            if (p >= Metalog.LEAST_POSITION && p <= Metalog.MOST_POSITION) {
                return new Metalog(2, likely, 12, Bounds.POSITIVE);
            }
            likely = position < 0.5 ? Math.nextUp(likely) : Math.nextDown(likely);
        }
        throw new AssertionError("no feasible value near " + position);
    }
}
