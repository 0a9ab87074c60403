package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/**
 * Whatever happens to a sheet of comma-separated values, each of its rows is in the log or among the refused, and nothing
 * throws. Seven thousand here and three thousand workbooks in {@link WorkbookMutationTest}.
 */
class RecordsMutationTest {
    private static final int SHEETS = 7_000;
    private static final long SEED = 20_270_216;
    private static final int SHOWN = 40;
    static final String[] NASTY = {
        "1e400",
        "-1",
        "NaN",
        "Infinity",
        "\"",
        "\"\"",
        ",",
        "\n",
        "\r",
        ";",
        "\t",
        "\u0000",
        "\uFEFF",
        "\u202E",
        "😀",
        "9".repeat(400),
        "0001-01-01",
        "9999-12-31",
        "2026-02-29",
        "=1+1",
        "about",
        "~",
        "1/0 in",
        "/32 in",
        "e",
        ".",
        "-",
        "begin",
        "end",
        "fit",
        "off",
        "meter",
        "bought",
        "tread",
        "flat",
        "0",
        "24",
        "1e3",
        "about 1e9",
        "2 sets"
    };

    @Test
    void read_mutatedSheets_loseNoRowAndNeverThrow() throws IOException {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        String whole = Files.readString(DemoRecords.FILE);
        String[] lines = whole.split("\n", -1);
        for (int i = 0; i < SHEETS; i++) {
            String text = mutated(part(lines, random), random);
            Records records = RecordsFile.read("log.csv", text.getBytes(StandardCharsets.UTF_8), Map.of());
            assertThat(records.log().rows() + records.refused().size())
                    .as("sheet %s of seed %s:\n%s", i, SEED, text)
                    .isEqualTo(records.rows());
            assertThat(records.unread().isEmpty() || records.rows() == 0).isTrue();
        }
    }

    /** The header and some rows. */
    private static String part(String[] lines, RandomGenerator random) {
        StringBuilder text = new StringBuilder(lines[0]).append('\n');
        int from = 1 + random.nextInt(lines.length - SHOWN - 1);
        for (int i = 0; i < random.nextInt(1, SHOWN); i++) {
            text.append(lines[from + i]).append('\n');
        }
        return text.toString();
    }

    private static String mutated(String text, RandomGenerator random) {
        StringBuilder changed = new StringBuilder(text);
        for (int n = random.nextInt(1, 6); n > 0; n--) {
            // The first row is spared nine times in ten: without it nothing is read.
            int first = random.nextInt(10) == 0 ? 0 : text.indexOf('\n') + 1;
            int at = Math.min(first + random.nextInt(Math.max(changed.length() - first, 1)), changed.length());
            int length = Math.min(random.nextInt(8), changed.length() - at);
            switch (random.nextInt(3)) {
                case 0 -> changed.delete(at, at + length);
                case 1 -> changed.insert(at, NASTY[random.nextInt(NASTY.length)]);
                default -> changed.replace(at, at + length, NASTY[random.nextInt(NASTY.length)]);
            }
        }
        return changed.toString();
    }

    @Test
    void read_hundredThousandRows_accountsForAll() {
        StringBuilder text = new StringBuilder("date,machine,event,hours,position,assembly\n");
        for (int i = 0; i < 100_000; i++) {
            int machine = i % 50;
            int day = i / 50;
            text.append(java.time.LocalDate.of(2020, 1, 1).plusDays(day))
                    .append(",M")
                    .append(machine)
                    .append(i % 7 == 0 ? ",flat," : ",reading,")
                    .append(i % 14 == 0 ? "" : Integer.toString(2 * day))
                    .append(",drive,\n");
        }
        Records records = RecordsFile.read("log.csv", text.toString().getBytes(StandardCharsets.UTF_8), Map.of());
        assertThat(records.rows()).isEqualTo(100_000);
        assertThat(records.refused()).isEmpty();
        assertThat(records.log().rows()).isEqualTo(100_000);
    }
}
