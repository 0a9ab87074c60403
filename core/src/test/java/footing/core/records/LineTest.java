package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.core.money.ReferenceValue;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LineTest {
    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(LineTest.class, "line.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void of_referenceData_givesTheReferenceValue(ReferenceValue r) {
        Line line = DataSet.line(r.inputs().get(0));
        r.check(
                switch (r.function()) {
                    case "intercept" -> line.intercept();
                    case "slope" -> line.slope();
                    case "slopeError" -> line.slopeError();
                    case "residual" -> line.residual();
                    case "meanSquare" -> line.meanSquare();
                    case "at" -> line.at(r.number(1));
                    case "reaching" -> line.reaching(r.number(1));
                    case "low" ->
                        line.limits(r.number(1), r.number(2), r.number(3)).low();
                    case "high" ->
                        line.limits(r.number(1), r.number(2), r.number(3)).high();
                    case "interceptError" ->
                        Math.sqrt(line.meanSquare() * (1.0 / line.n() + line.meanX() * line.meanX() / line.squaresX()));
                    case "determination" -> explained(line) / (explained(line) + line.residual());
                    case "residualDeviation" -> Math.sqrt(line.meanSquare());
                    case "explained" -> explained(line);
                    case "deltaError" -> deltaError(line, r.number(1), r.number(2));
                    case "unsure" -> Math.pow(t(line, (1 + r.number(1)) / 2) * line.slopeError() / line.slope(), 2);
                    case "chance" ->
                        2 * new TDistribution(line.n() - 2).cumulativeProbability(line.slope() / line.slopeError());
                    case "reachLow" -> reach(line, r).low();
                    case "reachHigh" -> reach(line, r).high();
                    default -> throw new AssertionError(r.function());
                });
    }

    private static double explained(Line line) {
        return line.slope() * line.slope() * line.squaresX();
    }

    private static double t(Line line, double p) {
        return new TDistribution(line.n() - 2).inverseCumulativeProbability(p);
    }

    /** The error of where the line reaches y by the first order of its parts, s/b·√(k + 1/n + (d/b)²/Sxx). */
    private static double deltaError(Line line, double y, double more) {
        double off = line.reaching(y) - line.meanX();
        double squares = more + 1.0 / line.n() + off * off / line.squaresX();
        return Math.sqrt(line.meanSquare() * squares) / Math.abs(line.slope());
    }

    private static Limits reach(Line line, ReferenceValue r) {
        return line.reachingLimits(r.number(1), r.number(2), r.number(3)).orElseThrow();
    }

    @Test
    void reachingLimits_noSlopeToBeTold_areRefused() {
        Line line = DataSet.line("flat");
        assertThat(line.slope()).isCloseTo(-0.001, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(line.reachingLimits(3, 0, 0.95)).isEmpty();
    }

    @Test
    void of_tooFewOrEqual_isRefused() {
        assertThatThrownBy(() -> Line.of(new double[] {1}, new double[] {2})).hasMessageContaining("needs two");
        assertThatThrownBy(() -> Line.of(new double[] {1, 1}, new double[] {2, 3}))
                .hasMessageContaining("all at");
    }
}
