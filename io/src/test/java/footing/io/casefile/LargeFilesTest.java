package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as large as are read at all, made to be slow: each ends in problems, and none in hours of work. */
class LargeFilesTest {
    private static final int ALMOST = 1_900_000;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "9",
                "x",
                "- a\n",
                "a: 1\n",
                "? ",
                "\"",
                "[1, ",
                "{a: 1, ",
                "a: ",
                "&a ",
                "*a\n",
                "!t ",
                "\n",
                " ",
                "\t",
                "'",
                "|\n ",
                "# c\n",
                "%",
                "\\",
                "\r",
                "- - ",
                "x,",
                "\u2028",
                "😀",
                "1 %\n",
                "? a\n: b\n",
                "\"a\":{",
            })
    void read_onePieceRepeated_isRefused(String piece) {
        assertThat(CaseFile.read(piece.repeat(ALMOST / piece.length()), "large.yaml")
                        .problems())
                .isNotEmpty();
    }

    private static Reading withMany(String usual, String head, IntFunction<String> item, int count) {
        String many = IntStream.range(0, count).mapToObj(item).collect(Collectors.joining());
        return CaseFile.read(BrokenCase.base().replace(usual, head + many + usual), "large.yaml");
    }

    @Test
    void read_hundredThousandMachines_isRefusedAsTooLong() {
        assertThat(withMany("  - id: N1\n", "", i -> "  - {id: m" + i + "}\n", 100_000)
                        .problems())
                .singleElement()
                .extracting(p -> p.read() + "; " + p.message())
                .isEqualTo("100002 items; a list this long is not read");
    }

    @Test
    void read_hundredThousandPackages_isRefusedAsTooMany() {
        Reading reading = withMany("  sealed:", "", i -> "  p" + i + ": {drive: a, caster: b}\n", 60_000);

        assertThat(reading.problems()).singleElement().extracting(p -> p.path()).isEqualTo("packages");
    }

    @Test
    void read_thousandsOfUnknownReferences_listsThemBounded() {
        String list = IntStream.range(0, 999).mapToObj(i -> "seal" + i).collect(Collectors.joining(", "));
        Reading reading = withMany(
                "  - id: N1\n",
                "",
                i -> "  - {id: m" + i + ", crew: north, hoursNow: 0, keepUntil: 9, hoursPerYear: 9, crewOutput: 1 %,\n"
                        + "     flatsPerSeason: 1, carries: on-air, consider: [" + list + "]}\n",
                200);

        assertThat(reading.problems()).hasSize(501);
    }

    @Test
    void read_moreCombinationsThanAnybodyCompares_isRefused() {
        String drives = IntStream.range(0, 101).mapToObj(i -> "d" + i).collect(Collectors.joining(", "));
        String stated = IntStream.range(0, 101)
                .mapToObj(i -> "  d" + i + ": {kind: air, position: drive, price: 1, life: 1}\n")
                .collect(Collectors.joining());
        String text = BrokenCase.base()
                .replace("consider: [on-air, sealed]", "consider: {drive: [" + drives + "], caster: [hard]}")
                .replace("assemblies:\n", "assemblies:\n" + stated);

        assertThat(CaseFile.read(text, "large.yaml").problems())
                .singleElement()
                .hasToString(
                        "large.yaml:173: machines.N2.consider: read '101 packages'; so many are not compared for one"
                                + " machine\n   at most 100 would fit");
    }
}
