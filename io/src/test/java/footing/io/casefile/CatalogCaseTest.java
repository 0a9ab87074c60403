package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogCaseTest {
    private static final String PRICES = """
            format: footing-catalog/1
            title: Spring prices
            date: 2027-02-01
            basis: quoted
            assemblies:
              foamed: {kind: foam, position: drive, price: 400, life: 650}
              spoked: {kind: airless, position: drive, price: 700, life: 1500, basis: typical, date: 2026-01-01}
              unused: {kind: solid, position: drive, price: 90, life: 1000}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void writePrices() throws Exception {
        Files.createDirectories(folder.resolve("sub"));
        Files.writeString(folder.resolve("sub/prices.yaml"), PRICES);
        Files.writeString(folder.resolve("outside.yaml"), PRICES);
    }

    private Reading read(String catalog, String drive) throws Exception {
        String text = BrokenCase.base()
                .replace("currency: USD", "currency: USD\ncatalog: " + catalog)
                .replace("sealed: {drive: treated", "sealed: {drive: " + drive);
        Path file = folder.resolve("sub/case.yaml");
        Files.writeString(file, text);
        return CaseFile.read(file);
    }

    @Test
    void read_quotedArticle_isStated() throws Exception {
        Case c = CaseFileTest.accepted(read("prices.yaml", "foamed"));

        assertThat(c.assembly("foamed").numbers().origin(Key.PRICE)).isEqualTo(Origin.STATED);
        assertThat(c.assemblies().stream().map(Case.Assembly::id)).doesNotContain("unused", "spoked");
    }

    @Test
    void read_typicalArticle_isTypical() throws Exception {
        Case c = CaseFileTest.accepted(read("prices.yaml", "spoked"));

        assertThat(c.assembly("spoked").numbers().origin(Key.PRICE)).isEqualTo(Origin.TYPICAL);
        assertThat(c.assembly("spoked").numbers().origin(Key.TAKE_OFF)).isEqualTo(Origin.DEFAULT);
    }

    @Test
    void read_sealantArticle_bringsWhatItTreats() throws Exception {
        Case c = CaseFileTest.accepted(read("starter", "drive-24x12-sealant"));

        assertThat(c.assembly("drive-24x12-air").numbers().origin(Key.LIFE)).isEqualTo(Origin.TYPICAL);
    }

    @Test
    void read_ownAssemblyOfTheSameId_comesFirst() throws Exception {
        Files.writeString(folder.resolve("sub/prices.yaml"), PRICES.replace("foamed", "treated"));

        Case c = CaseFileTest.accepted(read("prices.yaml", "treated"));

        assertThat(c.assembly("treated").numbers().get(Key.PRICE).orElseThrow().likely())
                .isEqualTo(262);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../outside.yaml", "missing.yaml", "\"a\\0b\"", ".", "/etc/hostname"})
    void read_fileThatIsNotBesideTheCase_isRefusedAlone(String catalog) throws Exception {
        Reading reading = read(catalog, "foamed");

        assertThat(reading.problems()).hasSize(1);
        assertThat(reading.problems().get(0).path()).isEqualTo("catalog");
    }

    @Test
    void read_catalogWithProblems_namesTheCatalogsFileAndLine() throws Exception {
        Files.writeString(folder.resolve("sub/prices.yaml"), PRICES.replace("price: 400", "price: $400"));

        assertThat(read("prices.yaml", "foamed").problems().get(0).toString())
                .startsWith("prices.yaml:6: assemblies.foamed.price: read '$400'; money is a plain number");
    }

    @Test
    void read_unknownArticle_suggestsOneOfTheCatalog() throws Exception {
        assertThat(read("prices.yaml", "fomed").problems().get(0).advice()).isEqualTo("did you mean \"foamed\"?");
    }
}
