package footing.io.interview;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Season;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseTextTest {
    private static final Path GOLDEN = Path.of("src/test/resources/footing/io/interview/street-crew.yaml");

    @Test
    void caseText_nobodyKnowsAnything_isACaseThatCanBeAnswered() {
        Answer answer = Answers.answered(Map.of());

        assertThat(answer.machines()).hasSize(1);
        assertThat(answer.of().heading().title()).isEqualTo("One crew, one mower");
        assertThat(answer.of().season()).isEqualTo(new Season(MonthDay.of(4, 5), MonthDay.of(10, 31)));
        assertThat(answer.of().packages().stream().map(Case.WheelPackage::id))
                .containsExactly("as-now", "sealant", "foam", "solid-casters", "airless", "airless-and-solid");
    }

    @Test
    void caseText_nobodyKnowsAnything_namesEveryGuess() {
        String text = Interview.caseText(Map.of(), Answers.TODAY);
        String flat = text.replaceAll("\\s*\\n *#? *", " ");

        assertThat(text).doesNotContain("yours:").doesNotContain("# yours");
        for (Interview.Taken guess : Interview.guesses(Map.of())) {
            boolean ofWheels =
                    List.of("pairPrice", "life").contains(guess.field().id());
            assertThat(flat)
                    .as(guess.field().id())
                    .contains("guess: " + (ofWheels ? "typical price, not a quote" : guess.from()));
        }
    }

    @Test
    void caseText_allAnswered_isTheGoldenFile() throws IOException {
        assertThat(Interview.caseText(Answers.all(), Answers.TODAY)).isEqualTo(Files.readString(GOLDEN));
    }

    @Test
    void caseText_allAnswered_hasNoWarningAndTheNumbersTyped() {
        String text = Interview.caseText(Answers.all(), Answers.TODAY);
        Case c = Answers.accepted(text);

        assertThat(CaseFile.read(text, "new.yaml").warnings()).isEmpty();
        assertThat(Answers.answered(Answers.all()).machines()).hasSize(2);
        assertThat(number(c.crew("crew"), Key.BILLING)).isEqualTo(174);
        assertThat(number(c.crew("crew"), Key.WAGE)).isEqualTo(21.4);
        assertThat(number(c.crew("crew"), Key.BURDEN)).isEqualTo(0.17);
        assertThat(number(c.crew("crew"), Key.DAY)).isEqualTo(9.5);
        assertThat(c.crew("crew").fixes().stream().map(Case.Fix::name))
                .containsExactly("plug on site", "spare wheel", "to the shop", "call-out");
        assertThat(c.crew("crew").fixes().get(0).numbers().get(Key.DELAY))
                .contains(new Metalog(0.3, 0.5, 1, Bounds.POSITIVE));
        Case.Machine m2 = c.machine("m2");
        assertThat(m2.numbers().get(Key.HOURS_NOW)).contains(Spread.of(1100));
        assertThat(m2.numbers().get(Key.FLATS_PER_SEASON)).contains(new Metalog(2, 4, 8, Bounds.POSITIVE));
        assertThat(m2.numbers().get(Key.FLATS_AT_DRIVE)).contains(Spread.of(0.8));
        assertThat(c.assembly("drive-20x10-airless").numbers().get(Key.PRICE)).contains(Spread.of(590));
    }

    private static double number(Case.Crew crew, Key key) {
        return crew.numbers().get(key).orElseThrow().likely();
    }

    @Test
    void caseText_lifeTyped_lastsThatLongOnTheirGround() {
        Case c = Answers.read(Answers.of("life", "660", "pavement", "mostly"));
        double life = c.assembly("drive-24x12-air")
                .numbers()
                .get(Key.LIFE)
                .orElseThrow()
                .likely();
        double wear =
                c.machine("m1").numbers().get(Key.GROUND_WEAR).orElseThrow().likely();

        assertThat(life * wear).isEqualTo(660);
    }

    @Test
    void caseText_theOwnerAlone_paysNoBurdenAndNoPremium() {
        Case.Crew crew = Answers.read(Answers.of("who", "owner", "people", "4")).crew("crew");

        assertThat(number(crew, Key.PEOPLE)).isEqualTo(1);
        assertThat(number(crew, Key.BURDEN)).isZero();
        assertThat(number(crew, Key.OVERTIME_PREMIUM)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"man, 60, 180", "crew, 60, 60", "day, 900, 100"})
    void caseText_chargePer_isBilledPerCrewHour(String per, String charge, double billing) {
        Case c = Answers.read(Answers.of("chargePer", per, "charge", charge, "people", "3"));

        assertThat(number(c.crew("crew"), Key.BILLING)).isEqualTo(billing);
    }

    @ParameterizedTest
    @CsvSource({"slack, 0", "late, 0.5", "saturday, 0.5", "skipped, 0.5", "mixed, 0.5"})
    void caseText_hourComesBack_takesItsPremium(String how, double premium) {
        Case.Crew crew = Answers.read(Answers.of("makeUp", how)).crew("crew");

        assertThat(number(crew, Key.OVERTIME_PREMIUM)).isEqualTo(premium);
        assertThat(crew.numbers().get(Key.MAKE_UP_TODAY)).isPresent();
        assertThat(crew.numbers().get(Key.MAKE_UP_LATER)).isPresent();
    }

    @Test
    void caseText_skipped_makesUpLessThanAnyOther() {
        assertThat(List.of("slack", "late", "saturday", "mixed")).allMatch(how -> later(how) > later("skipped"));
    }

    private static double later(String how) {
        return number(Answers.read(Answers.of("makeUp", how)).crew("crew"), Key.MAKE_UP_LATER);
    }

    @Test
    void caseText_fullWeeks_runFromTheFirstCutToTheLastAtMost() {
        assertThat(fullWeeks("fullWeeks", "2", "firstCut", "12-28", "lastCut", "03-01"))
                .isEqualTo(new Season(MonthDay.of(12, 28), MonthDay.of(1, 10)));
        assertThat(fullWeeks("fullWeeks", "52")).isEqualTo(new Season(MonthDay.of(4, 5), MonthDay.of(10, 31)));
        assertThat(Answers.read(Answers.of("fullWeeks", "0")).crew("crew").fullWeeks())
                .isEmpty();
    }

    private static Season fullWeeks(String... answers) {
        return Answers.read(Answers.of(answers)).crew("crew").fullWeeks().get(0).days();
    }

    @ParameterizedTest
    @CsvSource({"wait, 1, 1", "half, 1, 0.5", "on, 1, 0.25", "on, 5, 0.2", "?, 1, 0.5", "?, 4, 0.25"})
    void caseText_whatTheOthersDo_isTheShareOfTheirMowing(String others, String alike, double output) {
        Case c = Answers.read(Answers.of("others", others, "alike", alike));

        assertThat(c.machines()).hasSize(Integer.parseInt(alike));
        assertThat(c.machine("m1").numbers().get(Key.CREW_OUTPUT)).contains(Spread.of(output));
    }

    @Test
    void caseText_secondMowerStepsIn_onlyWhereItTakesLong() {
        Case.Crew crew = Answers.read(Answers.of("second", "yes")).crew("crew");

        assertThat(crew.fixes().stream()
                        .map(f ->
                                f.numbers().get(Key.OUTPUT).map(Spread::likely).orElse(0.0)))
                .containsExactly(0.0, 0.0, 0.6, 0.6);
    }

    @Test
    void caseText_shareOfNothing_leavesTheFixOut() {
        Case.Crew crew = Answers.read(Answers.of("plugShare", "100")).crew("crew");

        assertThat(crew.fixes().stream().map(Case.Fix::name)).containsExactly("plug on site");
    }

    @Test
    void caseText_noFlatsLastSeason_leavesRoomForSome() {
        Case.Machine m1 = Answers.read(Answers.of("flats", "0")).machine("m1");

        assertThat(m1.numbers().get(Key.FLATS_PER_SEASON)).contains(new Metalog(0.25, 0.5, 1, Bounds.POSITIVE));
    }

    @Test
    void caseText_onOrder_isNewWithoutWornSets() {
        Case.Machine m1 = Answers.read(Answers.of("owned", "order")).machine("m1");

        assertThat(m1.isNew()).isTrue();
        assertThat(m1.carries().id()).isEqualTo("as-delivered");
        assertThat(m1.numbers().get(Key.HOURS_NOW)).contains(Spread.of(0));
        assertThat(m1.numbers().get(Key.WORN_DRIVE)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"air", "sealant", "foam", "airless"})
    void caseText_anyPairOfKinds_considersNoPackageTwice(String drive) {
        for (String caster : List.of("air", "sealant", "foam", "solid", "airless")) {
            String text = Interview.caseText(Answers.of("driveKind", drive, "casterKind", caster), Answers.TODAY);

            assertThat(CaseFile.read(text, "new.yaml").warnings()).isEmpty();
            assertThat(Answers.accepted(text).packages()).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void caseText_otherCurrency_statesEveryWheelItself() {
        String text = Interview.caseText(Answers.of("currency", "CAD"), Answers.TODAY);

        assertThat(Answers.accepted(text).heading().currency()).isEqualTo("CAD");
        assertThat(text).doesNotContain("catalog: starter").contains("US dollars");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "life=700;pairPrice=1180", "currency=CAD;alike=3", "owned=order;who=owner"})
    void caseText_everySwitchedOffLineTurnedOn_isTheSameCase(String answers) {
        Map<String, String> given = answers.isEmpty() ? Map.of() : Answers.of(answers.split("[=;]", -1));
        String text = Interview.caseText(given, Answers.TODAY);
        String on = text.lines()
                .map(l -> l.matches(" *#[^ ].*|    # [a-zA-Z]+: [\\d.]+, .*}") ? l.replaceFirst("#", "") : l)
                .reduce("", (a, b) -> a + b + "\n");

        assertThat(on).isNotEqualTo(text);
        Case stated = Answers.accepted(on);
        Case left = Answers.accepted(text);
        assertThat(footing.io.casefile.Defaults.list(stated))
                .hasSizeLessThan(footing.io.casefile.Defaults.list(left).size());
        assertThat(footing.core.fleet.Resolver.resolve(stated))
                .usingRecursiveComparison()
                .isEqualTo(footing.core.fleet.Resolver.resolve(left));
    }
}
