package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DefaultsTest {
    private static List<Defaults.Line> base() {
        return Defaults.list(CaseFileTest.accepted(CaseFile.read(BrokenCase.base(), "case.yaml")));
    }

    @Test
    void list_base_valuesInNaturalUnitsWithTheirReasons() {
        assertThat(base())
                .contains(
                        new Defaults.Line("money.inflation", "2.5 %", "common practice, no source"),
                        new Defaults.Line("crews.north.burden", "18 %", "common practice, no source"),
                        new Defaults.Line("crews.north.makeUpToday", "30 min", "common practice, no source"),
                        new Defaults.Line(
                                "crews.north.fullWeeks[0].makeUpLater",
                                "{low: 25 %, likely: 45 %, high: 70 %}",
                                "as in other weeks"),
                        new Defaults.Line("machines.N1.relevel", "20 min", "common practice, no source"),
                        new Defaults.Line("machines.N1.runOut", "100 h", "common practice, no source"),
                        new Defaults.Line("machines.N1.counts.drive", "2", "common practice, no source"),
                        new Defaults.Line("machines.N1.when", "[now]", "a new machine is ordered as it will run"));
    }

    @Test
    void list_base_namesNothingThatIsStatedOrMeansNothing() {
        assertThat(base().stream().map(Defaults.Line::path))
                .doesNotHaveDuplicates()
                .doesNotContain(
                        "money.discountRate",
                        "crews.north.day",
                        "machines.N2.flatsAt.drive",
                        "machines.N2.flatsAt.caster",
                        "machines.N2.when",
                        "machines.N1.worn.drive",
                        "assemblies.hard.treatPrice",
                        "machines.N1.upcharge");
    }

    @Test
    void list_shopRateOfTwoCrews_onceForEach() {
        String solo = """
                  solo: {people: 1, wage: 30, billing: 70, burden: 0 %, fixes: [{name: x, share: 100 %, delay: 1 h}]}
                assemblies:
                """;
        String text = BrokenCase.base()
                .replace("  shopRate: 60\n", "")
                .replace("assemblies:\n", solo)
                .replace("- id: N2\n    crew: north", "- id: N2\n    crew: solo");

        assertThat(Defaults.list(CaseFileTest.accepted(CaseFile.read(text, "case.yaml"))))
                .contains(
                        new Defaults.Line("money.shopRate", "23.6", "the crew's wage with burden, crew north"),
                        new Defaults.Line("money.shopRate", "30", "the crew's wage with burden, crew solo"));
    }
}
