package footing.io.edit;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.io.form.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseEditTest {
    private static final String LARGE = read("quillbrook.yaml");
    private static final String SMALL = read("one-machine.yaml");

    static String read(String name) {
        try {
            return Files.readString(Path.of("../cases", name));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String changed(String text, String path, String typed) {
        return changed(CaseEdit.set(text, path, typed));
    }

    private static String changed(Edited edited) {
        assertThat(edited.problems()).isEmpty();
        return edited.text();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crews.estates.wage | 22.75 | wage: 21.40 | wage: 22.75",
                "crews.estates.fixes[1].delay | 2 h | delay: {low: 70 min, likely: 115 min, high: 200 min} | delay: 2 h",
                "crews.estates.fixes[1].delay | 60 / 100 / 190 min | low: 70 min, likely: 115 min, high: 200 min | low: 60 min, likely: 100 min, high: 190 min",
                "crews.estates.fullWeeks[0].makeUpLater | 30 % | makeUpLater: 20 %} | makeUpLater: 30 %}",
                "machines.E1.flatsPerSeason | 2/4/9 | {low: 3, likely: 6, high: 11}, carries: air-24,\\n     consider: [air-24, air-24-s, sealant-24, foam-24 | {low: 2, likely: 4, high: 9}, carries: air-24,\\n     consider: [air-24, air-24-s, sealant-24, foam-24",
                "machines.E2.worn.drive | 35 | worn: {drive: 20, caster: 640} | worn: {drive: 35, caster: 640}",
                "machines.E1.upcharge.airless-24 | 850 | {airless-24: 905} | {airless-24: 850}",
                "assemblies.drive24-foam.price | 399.50 | price: 415 | price: 399.50",
                "money.loan.rate | 7.25 % | {rate: 6.9 %, | {rate: 7.25 %,"
            })
    void set_statedValue_changesItAlone(String path, String typed, String before, String after) {
        String old = before.replace("\\n", "\n");

        assertThat(LARGE).containsOnlyOnce(old);
        assertThat(changed(LARGE, path, typed)).isEqualTo(LARGE.replace(old, after.replace("\\n", "\n")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crews.streets.overtimePremium | 40 % | billing: 112 | overtimePremium: 40 %\\n    billing: 112",
                "crews.school.fixes[0].output | 50 % | high: 50 min}, cost: 4} | high: 50 min}, cost: 4, output: 50 %}",
                "money.loan.down | 10 % | months: 36} | months: 36, down: 10 %}",
                "machines.E1.upcharge.foam-24 | 300 | {airless-24: 905} | {airless-24: 905, foam-24: 300}",
            })
    void set_absentKey_insertsItAtItsPlace(String path, String typed, String before, String after) {
        String text = changed(LARGE, path, typed);

        assertThat(text).isEqualTo(LARGE.replace(before, after.replace("\\n", "\n")));
        assertThat(changed(CaseEdit.remove(text, path))).isEqualTo(LARGE);
    }

    @Test
    void set_absentParents_makesThem() {
        Map<String, String> loan = new LinkedHashMap<>();
        loan.put("money.loan.rate", "6.5 %");
        loan.put("money.loan.months", "48");

        String text = changed(CaseEdit.set(SMALL, loan));

        assertThat(text)
                .isEqualTo(SMALL.replace(
                        "asOf: 2027-03-01\n", "asOf: 2027-03-01\nmoney: {loan: {rate: 6.5 %, months: 48}}\n"));
        assertThat(changed(CaseEdit.remove(text, "money.loan"))).isEqualTo(SMALL);
    }

    @Test
    void set_partsOfATax_areRightTogetherOnly() {
        Map<String, String> tax = new LinkedHashMap<>();
        tax.put("money.tax.rate", "24");
        tax.put("money.tax.schedule", "[20 %, 32 %, 48 %]");

        assertThat(CaseEdit.set(SMALL, "money.tax.rate", "24 %").problems())
                .extracting(Problem::path)
                .containsExactly("money.tax.schedule");
        assertThat(changed(CaseEdit.set(SMALL, tax)))
                .contains("\nmoney: {tax: {rate: 24 %, schedule: [20 %, 32 %, 48 %]}}\n");
    }

    @Test
    void set_fullWeeksLeftOut_makesTheList() {
        Map<String, String> week = new LinkedHashMap<>();
        week.put("crews.me.fullWeeks[0].from", "04-12");
        week.put("crews.me.fullWeeks[0].to", "06-01");
        week.put("crews.me.fullWeeks[0].makeUpToday", "10 min");

        String text = changed(CaseEdit.set(SMALL, week));

        assertThat(text).contains("    billing: 75\n    fullWeeks: [{from: 04-12, to: 06-01, makeUpToday: 10 min}]\n");
        assertThat(changed(CaseEdit.remove(text, "crews.me.fullWeeks[0]"))).isEqualTo(SMALL);
    }

    @Test
    void set_anItemBehindTheLast_addsOne() {
        String text = changed(LARGE, "crews.estates.fullWeeks[1]", "{from: 09-01, to: 09-20}");

        assertThat(text)
                .isEqualTo(LARGE.replace(
                        "makeUpLater: 20 %}\n", "makeUpLater: 20 %}\n      - {from: 09-01, to: 09-20}\n"));
        assertThat(changed(CaseEdit.remove(text, "crews.estates.fullWeeks[1]"))).isEqualTo(LARGE);
    }

    @ParameterizedTest
    @CsvSource({
        "crews.me.burden, 14, 14 %",
        "crews.me.makeUpLater, 0.5 / 2 / 4, '{low: 0.5 %, likely: 2 %, high: 4 %}'",
        "crews.me.makeUpToday, 30, 30 min",
        "crews.me.makeUpToday, 0, 0 h",
        "crews.me.burden, 0, 0 %",
        "machines.mower.relevel, 20 min, 20 min",
    })
    void set_unitLeftOutWhereItIsPlain_isFilledIn(String path, String typed, String written) {
        assertThat(changed(SMALL, path, typed)).contains(path.substring(path.lastIndexOf('.') + 1) + ": " + written);
    }

    @ParameterizedTest
    @CsvSource({
        "crews.me.burden, 0.14",
        "crews.me.burden, 2",
        "crews.me.variableCost, 1",
        "crews.me.day, 9",
        "assemblies.air.checkEvery, 50",
        "machines.mower.relevel, 20",
    })
    void set_unitLeftOutWhereItCanBeMisread_isAsked(String path, String typed) {
        Edited edited = CaseEdit.set(SMALL, path, typed);

        assertThat(edited.text()).isEqualTo(SMALL);
        assertThat(edited.problems()).singleElement().satisfies(p -> {
            assertThat(p.path()).isEqualTo(path);
            assertThat(p.advice()).contains(typed.equals("0.14") ? "14 %" : typed);
        });
    }

    @Test
    void set_flatsAtTheStatedEnd_changesTheOtherToTheRest() {
        String text = read("from-the-catalog.yaml");

        Edited edited = CaseEdit.set(text, "machines.right.flatsAt.drive", "65 %");

        assertThat(changed(edited)).isEqualTo(text.replace("{caster: 20 %}", "{caster: 35 %}"));
        Case stated = ((Edited.Changed) edited).stated();
        assertThat(stated.machine("right").numbers().get(Key.FLATS_AT_DRIVE)).contains(Spread.of(0.65));
    }

    @Test
    void set_flatsAtStatedAtBothEnds_keepsTheirSum() {
        String text = read("from-the-catalog.yaml").replace("{caster: 20 %}", "{drive: 80 %, caster: 20 %}");

        assertThat(changed(text, "machines.right.flatsAt.caster", "45 %"))
                .isEqualTo(text.replace("{drive: 80 %, caster: 20 %}", "{drive: 55 %, caster: 45 %}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "assemblies.drive-20x10-air.price",
                "assemblies.nobody.price",
                "machines.none.keepUntil",
                "machines[7].keepUntil",
                "crews.town.fixes[9].cost",
                "crews.town.wages",
                "season[0]",
                "title.of.it",
                "..",
                "[",
                "machines[99999999999].x",
                "",
            })
    void set_placeThatIsNone_isRefusedWithAReason(String path) {
        String text = read("from-the-catalog.yaml");

        Edited edited = CaseEdit.set(text, path, "3");
        assertThat(edited.problems()).isNotEmpty();
        assertThat(edited.text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"money.inflation", "crews.me.fixes[4]", "machines.other.worn", "", "crews.me.fixes[0].x"})
    void remove_whatIsNotStated_isRefused(String path) {
        Edited edited = CaseEdit.remove(SMALL, path);

        assertThat(edited.problems()).extracting(Problem::message).containsExactly("nothing is stated here");
        assertThat(edited.text()).isEqualTo(SMALL);
    }

    @Test
    void remove_whatMustBeStated_isRefused() {
        assertThat(CaseEdit.remove(SMALL, "crews.me.wage").problems())
                .extracting(Problem::path)
                .containsExactly("crews.me.wage");
        assertThat(CaseEdit.remove(SMALL, "crews.me").text()).isEqualTo(SMALL);
    }

    @Test
    void set_commentsAndLineBreaks_stay() {
        String text = "\uFEFF"
                + SMALL.replace("wage: 30", "wage:   30   # paid weekly \uD83D\uDE9C")
                        .replace("\n", "\r\n");

        String after = changed(text, "crews.me.variableCost", "12 %");

        assertThat(after).isEqualTo(text.replace("billing: 75\r\n", "billing: 75\r\n    variableCost: 12 %\r\n"));
        assertThat(changed(after, "crews.me.wage", "31")).isEqualTo(after.replace("wage:   30   #", "wage:   31   #"));
        assertThat(changed(CaseEdit.remove(after, "crews.me.variableCost"))).isEqualTo(text);
    }

    @Test
    void set_threePointOnLinesOfItsOwn_keepsThem() {
        String block = "    makeUpLater:\n      low: '20 %' # guess\n      likely: \"40 %\"\n      high: 60 %\n";
        String text = SMALL.replace("    fixes:\n", block + "    fixes:\n");

        assertThat(changed(text, "crews.me.makeUpLater", "25 / 45 / 70 %"))
                .isEqualTo(text.replace("20 %' ", "25 %' ")
                        .replace("\"40 %", "\"45 %")
                        .replace("high: 60", "high: 70"));
        assertThat(changed(text, "crews.me.makeUpLater", "50 %"))
                .isEqualTo(text.replace(block, "    makeUpLater: 50 %\n"));
    }

    @Test
    void set_idsWithDots_areFollowed() {
        String text = LARGE.replace("id: E1,", "id: E1.worn,")
                .replace("airless-24", "airless.24[1]")
                .replace("airless.24[1]:  {", "'airless.24[1]':  {")
                .replace("airless.24[1], ", "'airless.24[1]', ")
                .replace("airless.24[1]]", "'airless.24[1]']")
                .replace("{airless.24[1]: 905}", "{'airless.24[1]': 905}");

        assertThat(changed(text, "machines.E1.worn.upcharge.airless.24[1]", "700"))
                .isEqualTo(text.replace("905", "700"));
    }

    @Test
    void set_texts_areQuotedWhereTheyMust() {
        assertThat(changed(SMALL, "title", "Before: the spring # order"))
                .contains("\ntitle: \"Before: the spring # order\"\n");
        assertThat(changed(SMALL, "title", "Spring order")).contains("\ntitle: Spring order\n");
        assertThat(changed(SMALL, "note", "said \"yes\"\nand \\ no"))
                .contains("\ntitle: One mower, one owner\nnote: \"said \\\"yes\\\"\\nand \\\\ no\"\nasOf");
    }
}
