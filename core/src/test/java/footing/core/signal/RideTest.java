package footing.core.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class RideTest {
    private static final AccelerationUnit SI = AccelerationUnit.METERS_PER_SECOND_SQUARED;
    private static final double G = 9.80665;

    private static double bumps(double t) {
        return 1.5 * Math.sin(2 * Math.PI * 3 * t) + 0.8 * Math.sin(2 * Math.PI * 7.3 * t + 1);
    }

    @Test
    void ride_phoneOnItsSide_findsUpByGravity() {
        Log log = upright(100, 20, G);
        double[][] turned = {log.channels()[2], log.channels()[0], log.channels()[1]};
        Ride ride = Signals.measured(Ride.of(new Log(log.times(), turned), SI, OptionalInt.empty()));
        Ride straight = Signals.measured(Ride.of(log, SI, OptionalInt.empty()));
        assertThat(ride.z()).isEqualTo(straight.z());
        assertThat(straight.findings()).hasOnlyElementsOfType(Finding.LowRate.class);
    }

    @Test
    void ride_gTakenForMetersPerSecondSquared_isRefusedAndNamed() {
        Ride.Reading reading = Ride.of(upright(100, 20, 1), SI, OptionalInt.empty());
        assertThat(reading).isInstanceOf(Ride.WrongUnit.class);
        assertThat(((Ride.WrongUnit) reading).found().unit()).isEqualTo(AccelerationUnit.GRAVITY);
        assertThat(Ride.of(upright(100, 20, G), AccelerationUnit.GRAVITY, OptionalInt.empty()))
                .isInstanceOf(Ride.WrongUnit.class);
    }

    @Test
    void ride_withoutGravity_saysTheUnitIsUnchecked() {
        assertThat(Signals.ride(Signals.log(200, 20, RideTest::bumps, Weighting.WK))
                        .findings())
                .containsExactly(new Finding.UnitUnchecked());
    }

    @Test
    void ride_unsteadyClock_isResampledSaidAndClose() {
        Random random = new Random(4);
        double[] times = new double[2000];
        Arrays.setAll(times, i -> (i + 0.6 * random.nextDouble()) / 100);
        double[] z = Arrays.stream(times).map(t -> G + bumps(t)).toArray();
        Ride uneven = Signals.measured(Ride.of(
                new Log(times, new double[][] {new double[2000], new double[2000], z}), SI, OptionalInt.empty()));
        Ride even = Signals.measured(Ride.of(upright(100, 20, G), SI, OptionalInt.empty()));
        assertThat(uneven.findings()).hasAtLeastOneElementOfType(Finding.Resampled.class);
        assertThat(uneven.z().rms()).isCloseTo(even.z().rms(), Percentage.withPercentage(1));
    }

    @Test
    void ride_fiftyHertz_isReadAndSaysWhatItLeavesOut() {
        Ride ride = Signals.measured(Ride.of(upright(50, 20, G), SI, OptionalInt.empty()));
        assertThat(ride.findings())
                .filteredOn(f -> f instanceof Finding.LowRate)
                .singleElement()
                .satisfies(
                        f -> assertThat(((Finding.LowRate) f).highest()).isCloseTo(25, Percentage.withPercentage(0.1)));
        assertThat(Ride.of(upright(40, 20, G), SI, OptionalInt.empty())).isInstanceOf(Ride.TooSlow.class);
    }

    @Test
    void ride_gap_isToldAndLeftOut() {
        Log whole = upright(100, 30, G);
        int[] kept = IntStream.range(0, whole.size())
                .filter(i -> i < 1000 || i > 1500)
                .toArray();
        double[] times = Arrays.stream(kept).mapToDouble(i -> whole.times()[i]).toArray();
        double[][] channels = new double[3][];
        Arrays.setAll(
                channels,
                c -> Arrays.stream(kept)
                        .mapToDouble(i -> whole.channels()[c][i])
                        .toArray());
        Ride ride = Signals.measured(Ride.of(new Log(times, channels), SI, OptionalInt.empty()));
        assertThat(ride.findings()).hasAtLeastOneElementOfType(Finding.Gaps.class);
        assertThat(ride.seconds()).isCloseTo(25, Percentage.withPercentage(1));
        assertThat(ride.z().rms())
                .isCloseTo(
                        Signals.measured(Ride.of(whole, SI, OptionalInt.empty()))
                                .z()
                                .rms(),
                        Percentage.withPercentage(3));
    }

    @Test
    void clipped_flattenedPeaks_areCountedAndSmoothTopsAreNot() {
        double[] smooth = IntStream.range(0, 2000)
                .mapToDouble(i -> Math.rint(1000 * Math.sin(i / 40.0)) / 1000)
                .toArray();
        double[] flattened = Arrays.stream(smooth).map(a -> Math.min(a, 0.6)).toArray();
        assertThat(Quality.clipped(smooth)).isZero();
        assertThat(Quality.clipped(flattened)).isBetween(500, 700);
        assertThat(Quality.clipped(new double[100])).isZero();
    }

    @Test
    void log_timeRunningBackOrNoNumber_isRefused() {
        assertThatThrownBy(() -> new Log(new double[] {0, 0}, new double[][] {{1, 2}}))
                .hasMessageContaining("not after");
        assertThatThrownBy(() -> new Log(new double[] {0, Double.NaN}, new double[][] {{1, 2}}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Log(new double[] {0, 1}, new double[][] {{1, Double.NaN}}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ride_halfASecond_isTooShort() {
        assertThat(Ride.of(upright(100, 0.5, G), SI, OptionalInt.empty())).isInstanceOf(Ride.TooShort.class);
    }

    private static Log upright(double rate, double seconds, double gravity) {
        return Signals.log(rate, seconds, t -> gravity * (1 + bumps(t) / G), Weighting.WK);
    }
}
