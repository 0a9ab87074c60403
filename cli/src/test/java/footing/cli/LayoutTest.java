package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Every line of every page within 80 columns, in letters the terminal has. */
class LayoutTest {
    private static final String LONG = "the-very-long-name-of-a-thing-that-somebody-typed-with-no-thought-of-it";

    private static String longNames() throws IOException {
        return Files.readString(Path.of(Run.ONE_MACHINE))
                .replace("id: mower", "id: " + LONG)
                .replace("  me:", "  crew-" + LONG + ":")
                .replace("crew: me", "crew: crew-" + LONG)
                .replace("treated: {drive", "pack-" + LONG + ": {drive")
                .replace("plug on site", "plug \u2026 it \u2014 on the site where it happened " + LONG)
                .replace("title: One mower", "title: \"\u00dcmlaut\\u0007 " + LONG + "\" #");
    }

    private static void assertNarrow(Run run) {
        assertThat(run.out()).isNotEmpty();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    private static Run on(String text, Letters letters, String... args) {
        return Run.in(Path.of("."), text, letters, args);
    }

    @Test
    void assess_longNames_fitIn80Columns() throws IOException {
        Run run = on(longNames(), Letters.UTF8, "assess", "-", "--futures", "200");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertNarrow(run);
        assertThat(run.out()).contains("\u00dcmlaut?").doesNotContain("\u0007");
    }

    @Test
    void assess_asciiTerminal_getsPlainAscii() throws IOException {
        Run run = on(longNames(), Letters.ASCII, "assess", "-", "--quick", "--futures", "200");
        assertNarrow(run);
        assertThat(run.out()).matches("[\\x20-\\x7e\\n]*").contains("?mlaut");
    }

    @Test
    void assess_thirtyMachines_fitIn80ColumnsByCrew() throws IOException {
        String text = Files.readString(Path.of(Run.ONE_MACHINE));
        String machine = text.substring(text.indexOf("  - {id: mower"));
        StringBuilder fleet = new StringBuilder(text.substring(0, text.indexOf("  - {id: mower")));
        for (int i = 1; i <= 30; i++) {
            fleet.append(machine.replace("id: mower", "id: mower-" + i).replace("100 %", "3 %"));
        }
        Run run = on(fleet.toString(), Letters.UTF8, "assess", "-", "--quick", "--futures", "100");
        assertThat(run.code()).isZero();
        assertNarrow(run);
        assertThat(run.out()).contains("mower-30", "Crew me, one person");
    }

    @Test
    void check_longNames_fitIn80Columns() throws IOException {
        assertNarrow(on(longNames(), Letters.ASCII, "check", "-", "--defaults"));
    }

    @Test
    void explain_longNames_fitIn80Columns() throws IOException {
        assertNarrow(on(longNames(), Letters.ASCII, "explain", "-", LONG, "pack-" + LONG, "saving", "--futures", "50"));
    }

    @Test
    void assess_crewsOfTheFleet_standTogether() {
        String out = Run.of("assess", Run.NINE_MACHINES, "--quick", "--futures", "200")
                .out();
        assertThat(out.indexOf("Crew estates")).isLessThan(out.indexOf("Crew streets"));
        String streets = out.substring(out.indexOf("Crew streets"), out.indexOf("Crew school"));
        assertThat(streets).contains("S1", "S2", "S3", "S4").doesNotContain("E1", "C1");
    }
}
