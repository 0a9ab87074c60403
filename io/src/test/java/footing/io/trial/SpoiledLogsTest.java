package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.signal.Finding;
import footing.io.form.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Logs that instruments and their exports spoil: what is wrong is noticed, or changes nothing. */
class SpoiledLogsTest {
    private static final int EACH = 15;
    private static final String HEAD = "time (s),x (m/s2),y,z";

    @TempDir
    Path folder;

    /** Twelve seconds of a platform that shakes up and down, gravity included: time, x, y, z a line. */
    private static List<double[]> shaking(Random random, double rate) {
        List<double[]> samples = new ArrayList<>();
        double size = 1 + 2 * random.nextDouble();
        double frequency = 3 + 4 * random.nextDouble();
        for (int i = 0; i < 12 * rate; i++) {
            double t = i / rate;
            double z = 9.81 + size * Math.sin(2 * Math.PI * frequency * t) + 0.1 * random.nextGaussian();
            samples.add(new double[] {t, 0.1 * random.nextGaussian(), 0.1 * random.nextGaussian(), z});
        }
        return samples;
    }

    private static String written(String head, List<double[]> samples) {
        StringBuilder text = new StringBuilder(head).append('\n');
        for (double[] s : samples) {
            text.append(String.format(java.util.Locale.ROOT, "%.4f,%.4f,%.4f,%.4f%n", s[0], s[1], s[2], s[3]));
        }
        return text.toString();
    }

    private TrialReading read(byte[] log) throws IOException {
        Files.write(folder.resolve("log.csv"), log);
        return TrialFile.read(Files.writeString(folder.resolve("ride.yaml"), """
                format: footing-trial/1
                kind: ride
                title: Ride
                logUnit: m/s2
                a: {name: air}
                b: {name: airless}
                runs:
                  - {side: a, log: log.csv}
                  - {side: b, z: 1 m/s2}
                """));
    }

    private TrialReading read(String log) throws IOException {
        return read(log.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static StatedTrial accepted(TrialReading reading) {
        assertThat(reading).as(reading.toString()).isInstanceOf(TrialReading.Accepted.class);
        return ((TrialReading.Accepted) reading).stated();
    }

    private static double value(TrialReading reading) {
        return accepted(reading).trial().runs().get(0).value();
    }

    private static List<Finding> findings(TrialReading reading) {
        return accepted(reading).logs().stream()
                .map(StatedTrial.LogNote::finding)
                .toList();
    }

    private static void assertRefused(TrialReading reading, String told) {
        assertThat(reading).isInstanceOf(TrialReading.Refused.class);
        assertThat(((TrialReading.Refused) reading).problems())
                .extracting(Problem::toString)
                .anySatisfy(p -> assertThat(p).contains(told, "log.csv"));
    }

    @Test
    void read_clippedTops_areNoticed() throws IOException {
        for (int i = 0; i < EACH; i++) {
            List<double[]> samples = shaking(new Random(i), 100);
            samples.forEach(s -> s[3] = Math.min(s[3], 10.2));
            assertThat(findings(read(written(HEAD, samples)))).hasAtLeastOneElementOfType(Finding.Clipped.class);
            assertThat(findings(read(written(HEAD, shaking(new Random(i), 100)))))
                    .doesNotHaveAnyElementsOfTypes(Finding.Clipped.class, Finding.Gaps.class);
        }
    }

    @Test
    void read_gap_isNoticedAndLeftOut() throws IOException {
        for (int i = 0; i < EACH; i++) {
            List<double[]> samples = shaking(new Random(i), 100);
            double whole = value(read(written(HEAD, samples)));
            samples.removeIf(s -> s[0] > 5 && s[0] < 7);
            TrialReading reading = read(written(HEAD, samples));
            assertThat(findings(reading)).hasAtLeastOneElementOfType(Finding.Gaps.class);
            assertThat(value(reading)).isCloseTo(whole, within(0.1 * whole));
        }
    }

    @Test
    void read_valuesInG_areRefusedUnlessTheHeadingSaysSo() throws IOException {
        for (int i = 0; i < EACH; i++) {
            List<double[]> samples = shaking(new Random(i), 100);
            double right = value(read(written(HEAD, samples)));
            samples.forEach(s -> {
                for (int axis = 1; axis < 4; axis++) {
                    s[axis] /= 9.80665;
                }
            });
            assertRefused(read(written(HEAD, samples)), "look like g");
            double inG = value(read(written(HEAD.replace("m/s2", "g"), samples)));
            assertThat(inG).isCloseTo(right, within(0.01 * right));
        }
    }

    @Test
    void read_timeInMilliseconds_changesNothing() throws IOException {
        for (int i = 0; i < EACH; i++) {
            List<double[]> samples = shaking(new Random(i), 100);
            double right = value(read(written(HEAD, samples)));
            samples.forEach(s -> s[0] *= 1000);
            double told = value(read(written(HEAD.replace("(s)", "(ms)"), samples)));
            double guessed = value(read(written(HEAD.replace(" (s)", ""), samples)));
            assertThat(told).isCloseTo(right, within(1e-6));
            assertThat(guessed).isCloseTo(right, within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"30, samples a second", "10, samples a second"})
    void read_tooSlow_isRefused(double rate, String told) throws IOException {
        assertRefused(read(written(HEAD, shaking(new Random(1), rate))), told);
    }

    @Test
    void read_garbageInTheMiddle_isRefusedWithItsLine() throws IOException {
        String[] garbage = {"reset", "5.0,,,", "5.0,NaN,1,1", "5.0,1e999,1,1", "\u0000\u0000\u0000", "1.0,0,0,9.8"};
        for (String line : garbage) {
            List<double[]> samples = shaking(new Random(3), 100);
            String text = written(HEAD, samples);
            int middle = text.indexOf("\n5.0100");
            TrialReading reading = read(text.substring(0, middle + 1) + line + "\n" + text.substring(middle + 1));
            assertThat(reading).as(line).isInstanceOf(TrialReading.Refused.class);
            assertThat(((TrialReading.Refused) reading).problems())
                    .as(line)
                    .anySatisfy(p -> assertThat(p.line()).isBetween(500, 505));
        }
    }

    @Test
    void read_noise_isRefused() throws IOException {
        for (int i = 0; i < 100; i++) {
            byte[] noise = new byte[1 + new Random(i).nextInt(5000)];
            new Random(i).nextBytes(noise);
            assertThat(read(noise)).isInstanceOf(TrialReading.Refused.class);
        }
    }
}
