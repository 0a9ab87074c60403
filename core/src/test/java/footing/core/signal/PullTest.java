package footing.core.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class PullTest {
    /** Slack, a rise from 1 to 3 s, a breakaway to 1200 N, then 1000 N until the lever is let go at 8 s. */
    private static double breakaway(double t) {
        return t < 1 ? 0 : t < 3 ? 600 * (t - 1) : t < 3.2 ? 1200 - 1000 * (t - 3) : t < 8 ? 1000 : 0;
    }

    /** The same without a breakaway: the force just stops rising. */
    private static double level(double t) {
        return t < 1 ? 0 : t < 3 ? 500 * (t - 1) : t < 8 ? 1000 : 0;
    }

    @Test
    void pull_breakaway_isSlipAtThePeakAndSteadyAfter() {
        Pull pull = Pull.of(log(PullTest::breakaway, 8));
        assertThat(pull.peak()).isCloseTo(1200, Offset.offset(25.0));
        assertThat(pull.steady()).isCloseTo(1000, Offset.offset(10.0));
        assertThat(pull.slipAt()).isCloseTo(3.0, Offset.offset(0.1));
    }

    @Test
    void pull_levelingOff_isSlipWhereItStopsRising() {
        Pull pull = Pull.of(log(PullTest::level, 8));
        assertThat(pull.steady()).isCloseTo(1000, Offset.offset(10.0));
        assertThat(pull.slipAt()).isBetween(2.7, 3.1);
    }

    @Test
    void pull_reversedCellOrWildSample_changesNothing() {
        Pull plain = Pull.of(log(PullTest::breakaway, 0));
        assertThat(Pull.of(log(t -> -breakaway(t), 0))).isEqualTo(plain);
        assertThat(Pull.of(log(t -> t == 5 ? 9000 : breakaway(t), 0)).peak()).isEqualTo(plain.peak());
    }

    @Test
    void pull_letGoAtOnce_hasAPeakAlone() {
        Pull pull = Pull.of(log(t -> t < 1 ? 800 * t : t < 1.4 ? 800 : 0, 0));
        assertThat(pull.peak()).isEqualTo(800);
        assertThat(pull.steady()).isNull();
        assertThat(pull.findings()).hasOnlyElementsOfType(Finding.NoSteadyPull.class);
    }

    private static Log log(DoubleUnaryOperator force, double noise) {
        Random random = new Random(2);
        double[] times = new double[401];
        Arrays.setAll(times, i -> i / 40.0);
        double[] newtons = Arrays.stream(times)
                .map(t -> force.applyAsDouble(t) + noise * random.nextGaussian())
                .toArray();
        return new Log(times, new double[][] {newtons});
    }
}
