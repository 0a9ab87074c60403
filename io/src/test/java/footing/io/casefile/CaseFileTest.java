package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Resolver;
import footing.core.fleet.Season;
import footing.core.fleet.When;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class CaseFileTest {
    private static final int DEEP = 20_000;

    static Case accepted(Reading reading) {
        assertThat(reading.problems()).isEmpty();
        return reading.found().orElseThrow();
    }

    private static Case quillbrook() throws IOException {
        return accepted(CaseFile.read(Examples.FOLDER.resolve("quillbrook.yaml")));
    }

    @ParameterizedTest
    @MethodSource("footing.io.casefile.Examples#all")
    void read_example_isAcceptedWithoutWarningsAndResolves(Examples example) throws Exception {
        Reading reading = CaseFile.read(example.file());

        assertThat(reading.warnings()).isEmpty();
        Case stated = accepted(reading);
        assertThat(Resolver.resolve(stated)).hasSameSizeAs(stated.machines());
    }

    @ParameterizedTest
    @MethodSource("footing.io.casefile.Examples#all")
    void read_jsonTwin_isTheSameCase(Examples example) throws Exception {
        String json = JsonTwin.of(example.yaml());
        String pretty = new JsonMapper().readTree(json).toPrettyString().replace("  ", "\t");
        Case fromYaml = accepted(CaseFile.read(example.file()));

        assertThat(accepted(CaseFile.read(json, "twin.json"))).isEqualTo(fromYaml);
        assertThat(accepted(CaseFile.read(pretty, "twin.json"))).isEqualTo(fromYaml);
    }

    @Test
    void read_quillbrook_headingAndMoneyAsWritten() throws Exception {
        Case c = quillbrook();

        assertThat(c.heading().title()).isEqualTo("Quillbrook Grounds, before the spring order");
        assertThat(c.heading().prepared().recipient()).isEqualTo("Quillbrook Grounds");
        assertThat(c.heading().asOf()).isEqualTo(LocalDate.of(2027, 2, 15));
        assertThat(c.season()).isEqualTo(new Season(MonthDay.of(3, 22), MonthDay.of(11, 14)));
        assertThat(c.money().numbers().get(Key.DISCOUNT_RATE)).contains(Spread.of(0.08));
        Case.Loan loan = Objects.requireNonNull(c.money().loan());
        assertThat(loan.newOnly()).isTrue();
        assertThat(loan.numbers().get(Key.LOAN_RATE)).contains(Spread.of(0.069));
        assertThat(c.money().tax()).isNull();
    }

    @Test
    void read_quillbrook_crewsAndAssembliesAsWritten() throws Exception {
        Case.Crew estates = quillbrook().crew("estates");
        Case.Assembly treated = quillbrook().assembly("drive24-sealant");

        assertThat(estates.numbers().get(Key.MAKE_UP_LATER)).contains(new Metalog(0.25, 0.45, 0.7, Bounds.SHARE));
        assertThat(estates.fullWeeks().get(0).numbers().get(Key.FULL_LATER)).contains(Spread.of(0.2));
        assertThat(estates.fixes().get(0).numbers().get(Key.DELAY))
                .contains(new Metalog(20 / 60.0, 35 / 60.0, 65 / 60.0, Bounds.POSITIVE));
        assertThat(estates.fixes().stream().map(Case.Fix::sealable)).containsExactly(true, false, false, false);
        assertThat(treated.kind()).isEqualTo(Kind.SEALANT);
        assertThat(treated.treats()).isEqualTo("drive24-air");
        assertThat(treated.numbers().get(Key.LIFE)).contains(new Metalog(480, 690, 950, Bounds.POSITIVE));
    }

    @Test
    void read_quillbrook_machinesAsWritten() throws Exception {
        Case.Machine ordered = quillbrook().machine("E1");
        Case.Machine owned = quillbrook().machine("E2");

        assertThat(ordered.isNew()).isTrue();
        assertThat(ordered.upcharge()).containsExactlyEntriesOf(Map.of("airless-24", 905.0));
        assertThat(ordered.consider().stream().map(Case.WheelPackage::id))
                .containsExactly("air-24", "air-24-s", "sealant-24", "foam-24", "airless-24");
        assertThat(owned.numbers().get(Key.WORN_CASTER)).contains(Spread.of(640));
        assertThat(owned.when()).isEmpty();
    }

    @Test
    void read_combinations_takeNamedPackagesAndNameTheRest() throws Exception {
        Case c = accepted(CaseFile.read(Examples.FOLDER.resolve("from-the-catalog.yaml")));

        assertThat(c.machine("left").consider().stream().map(Case.WheelPackage::id))
                .startsWith("on-air", "drive-20x10-sealant + caster-11x4-solid")
                .hasSize(4);
        assertThat(c.machine("right").consider().stream().map(Case.WheelPackage::id))
                .containsExactly(
                        "drive-20x10-sealant + caster-11x4-solid",
                        "drive-20x10-sealant + caster-11x4-airless",
                        "drive-20x10-airless + caster-11x4-solid",
                        "drive-20x10-airless + caster-11x4-airless");
        assertThat(c.machine("right").when()).containsExactly(When.NOW);
    }

    @Test
    void read_flatsAtOneEnd_keepsTheShareAtTheDrives() throws Exception {
        Case c = accepted(CaseFile.read(Examples.FOLDER.resolve("from-the-catalog.yaml")));

        assertThat(c.machine("right").numbers().get(Key.FLATS_AT_DRIVE)).contains(Spread.of(0.8));
        assertThat(c.machine("right").numbers().get(Key.FLATS_AT_CASTER)).isEmpty();
    }

    @Test
    void read_byteOrderMarkAndWindowsLineEnds_sameCase() {
        String windows = "\uFEFF" + BrokenCase.base().replace("\n", "\r\n");

        assertThat(accepted(CaseFile.read(windows, "w.yaml")))
                .isEqualTo(accepted(CaseFile.read(BrokenCase.base(), "w.yaml")));
        assertThat(CaseFile.read(windows.replace("day: 9 h", "day: 9"), "w.yaml")
                        .problems()
                        .get(0)
                        .line())
                .isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? ", "[{a: "})
    void read_nestedDeeply_isRefused(String bracket) {
        Reading reading = CaseFile.read(bracket.repeat(DEEP), "deep.yaml");

        assertThat(reading.problems()).hasSize(1);
        assertThat(reading.problems().get(0).toString()).contains("deep.yaml:1: ");
    }

    @Test
    void read_nestedDeeper_thanTheLimit_saysSo() {
        assertThat(CaseFile.read("[".repeat(31), "deep.yaml").problems().get(0).message())
                .isEqualTo("nested deeper than 30");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   \n", "# nothing\n", "---\n", "null", "\uFEFF"})
    void read_nothing_isRefusedAsEmpty(String text) {
        assertThat(CaseFile.read(text, "empty.yaml").problems().get(0).message())
                .isEqualTo("the file is empty");
    }

    @Test
    void read_longerThanTheLimit_isRefused(@TempDir Path folder) throws Exception {
        String text = BrokenCase.base() + "# padding\n".repeat(200_000);
        Path file = Files.writeString(folder.resolve("long.yaml"), text);

        assertThat(CaseFile.read(text, "long.yaml").problems().get(0).message()).isEqualTo("longer than 2 MB");
        assertThat(CaseFile.read(file).problems())
                .isEqualTo(CaseFile.read(text, "long.yaml").problems());
    }

    @Test
    void read_notUtf8_namesTheLine(@TempDir Path folder) throws Exception {
        byte[] latin = BrokenCase.base().replace("North side", "Nørth").getBytes(StandardCharsets.ISO_8859_1);
        Path file = Files.write(folder.resolve("latin.yaml"), latin);

        assertThat(CaseFile.read(file).problems().get(0))
                .hasToString("latin.yaml:3: not UTF-8 text\n   save the file as UTF-8");
    }

    @Test
    void read_manyProblems_listsABoundedNumber() {
        StringBuilder text = new StringBuilder("format: footing-case/1\n");
        for (int i = 0; i < 5000; i++) {
            text.append("wrong").append(i).append(": 1\n");
        }
        List<?> problems = CaseFile.read(text.toString(), "many.yaml").problems();

        assertThat(problems).hasSize(501);
        assertThat(problems.get(500).toString()).contains("more problems than can be listed");
    }
}
