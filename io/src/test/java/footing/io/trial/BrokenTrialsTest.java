package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.signal.AccelerationUnit;
import footing.core.signal.Pull;
import footing.core.signal.Ride;
import footing.core.trial.TrialResult;
import footing.io.form.Problem;
import footing.io.form.Problems;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever happens to a log or a trial file, reading it ends in a result or in problems that say where. */
class BrokenTrialsTest {
    private static final int EACH = 2_500;
    private static final long SEED = 20_270_412;
    private static final String[] NASTY = {
        "1e400",
        "-1",
        ".nan",
        "NaN",
        "\"",
        "'",
        ",",
        ";;;",
        "\t",
        "\n\n",
        "[",
        "{",
        "}",
        ": ",
        "#",
        "&a ",
        "*a",
        "!!x ",
        "\u0000",
        "\uFEFF",
        "0 lbf",
        "9".repeat(300),
        "a\rb",
        "side",
        "even",
        "=1+1",
        "\u00b2"
    };

    @Test
    void read_damagedTrialFiles_endInATrialOrInPlaces() throws IOException {
        SplittableRandom random = new SplittableRandom(SEED);
        String[] files = {"pull.yaml", "ride.yaml", "opposed.yaml", "pivot.csv"};
        int refused = 0;
        for (int i = 0; i < EACH; i++) {
            String file = files[i % files.length];
            String text = damaged(Files.readString(TrialFileTest.DAY.resolve(file)), random);
            TrialReading reading = TrialFile.read(text, file);
            if (reading instanceof TrialReading.Accepted accepted) {
                TrialResult result = TrialResult.of(accepted.stated().trial());
                assertThat(TrialJson.of(accepted.stated(), result, List.of())).contains("\"verdict\"");
            } else {
                refused++;
                assertTold(((TrialReading.Refused) reading).problems(), text);
            }
        }
        assertThat(refused).isBetween(EACH / 4, EACH - EACH / 20);
    }

    @Test
    void read_damagedLogs_endInASignalOrInPlaces() throws IOException {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        String force = Files.readString(TrialFileTest.DAY.resolve("logs/pull-1.csv"));
        String shaking = shaking();
        int refused = 0;
        for (int i = 0; i < EACH; i++) {
            int values = i % 2 == 0 ? 1 : 3;
            String text = damaged(values == 1 ? force : shaking, random);
            Problems problems = new Problems("log.csv");
            LogFile.Read read = new LogFile(values, problems).read(new StringReader(text));
            if (read == null) {
                refused++;
                assertTold(problems.errors(), text);
            } else if (values == 1) {
                assertThat(Pull.of(read.log()).peak()).isFinite();
            } else {
                var unit = AccelerationUnit.METERS_PER_SECOND_SQUARED;
                assertThat(Ride.of(read.log(), unit, OptionalInt.empty())).isNotNull();
            }
        }
        assertThat(refused).isBetween(EACH / 4, EACH - EACH / 20);
    }

    @Test
    void read_endlessLog_stopsAtTheBound() throws IOException {
        Problems problems = new Problems("endless.csv");
        assertThat(new LogFile(1, problems).read(new Endless("%d,7\n"))).isNull();
        assertThat(problems.errors())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("longer than"));
    }

    @Test
    void read_endlessLine_stopsAtTheBound() throws IOException {
        Problems problems = new Problems("endless.csv");
        assertThat(new LogFile(1, problems).read(new Endless("%d,"))).isNull();
        assertThat(problems.hasErrors()).isTrue();
    }

    private static void assertTold(List<Problem> problems, String text) {
        assertThat(problems).as(text).isNotEmpty();
        assertThat(problems).allSatisfy(p -> {
            assertThat(p.line()).isPositive();
            assertThat(p.message()).isNotBlank();
            assertThat(p.toString()).hasSizeLessThan(1000);
        });
    }

    /** One to three cuts, swaps or insertions. */
    private static String damaged(String text, SplittableRandom random) {
        StringBuilder out = new StringBuilder(text);
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(out.length());
            int to = Math.min(out.length(), at + 1 + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> out.delete(at, to);
                case 1 -> out.insert(at, NASTY[random.nextInt(NASTY.length)]);
                case 2 -> out.replace(at, to, NASTY[random.nextInt(NASTY.length)]);
                default -> out.insert(random.nextInt(out.length()), out.substring(at, to));
            }
        }
        return out.toString();
    }

    private static String shaking() {
        StringBuilder log = new StringBuilder("time (s),x (m/s2),y,z\n");
        for (int i = 0; i < 250; i++) {
            log.append(i / 100.0).append(",0.1,-0.2,").append(9.8 + Math.sin(i)).append('\n');
        }
        return log.toString();
    }

    /** Line after line, without an end. */
    private static final class Endless extends Reader {
        private final String line;
        private String rest = "";
        private int count;

        Endless(String line) {
            this.line = line;
        }

        @Override
        public int read(char[] to, int from, int length) {
            if (rest.isEmpty()) {
                rest = line.replace("%d", Integer.toString(++count));
            }
            int n = Math.min(length, rest.length());
            rest.getChars(0, n, to, from);
            rest = rest.substring(n);
            return n;
        }

        @Override
        public void close() {}
    }
}
