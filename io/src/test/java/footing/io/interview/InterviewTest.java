package footing.io.interview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class InterviewTest {
    static List<String> ids() {
        return List.copyOf(Interview.fields().keySet());
    }

    @Test
    void questions_asData_areEightWithTextHelpAndFields() {
        assertThat(Interview.questions()).hasSize(8);
        assertThat(Interview.questions()).allSatisfy(q -> {
            assertThat(q.text()).endsWith("?");
            assertThat(q.why()).endsWith(".");
            assertThat(q.fields()).isNotEmpty();
        });
    }

    @Test
    void fields_asData_haveIdsAndLabelsOfTheirOwn() {
        List<Field> all =
                Interview.questions().stream().flatMap(q -> q.fields().stream()).toList();
        Set<String> labels = new HashSet<>();

        assertThat(Interview.fields()).hasSameSizeAs(all);
        assertThat(all).allMatch(f -> labels.add(f.label()));
        assertThat(all)
                .allMatch(f -> (f.shape().kind() == FieldKind.CHOICE)
                        != f.shape().choices().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("ids")
    void guess_ofEveryField_fitsItAndSaysWhereItComesFrom(String id) {
        Field field = Interview.field(id);
        Interview.Taken guess = Interview.guess(field, Map.of());

        assertThat(field.fault(guess.value())).isEmpty();
        assertThat(guess.value()).isNotBlank();
        assertThat(guess.shown()).isNotBlank();
        assertThat(guess.from()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void faults_dontKnowInAnyWords_leavesEveryFieldToItsGuess(String id) {
        for (String typed :
                List.of("", " ", "?", "Don't know", "don\u2019t know", "DONT KNOW", "idk", "Dunno", "no idea")) {
            assertThat(Interview.faults(Map.of(id, typed))).isEmpty();
            assertThat(Interview.guesses(Map.of(id, typed))).hasSameSizeAs(Interview.guesses(Map.of()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "chargePer, crew-hour, crew",
        "chargePer, Man hour, man",
        "owned, about to be bought, order",
        "second, 'yes, doing about 60 % of its work', yes",
        "driveKind, airless, airless"
    })
    void caseText_choiceTypedAsShown_isTheSameAsItsName(String id, String typed, String value) {
        java.time.LocalDate today = java.time.LocalDate.of(2027, 3, 1);
        assertThat(Interview.caseText(Map.of(id, typed), today))
                .isEqualTo(Interview.caseText(Map.of(id, value), today));
    }

    @Test
    void guess_besideOtherAnswers_followsThem() {
        assertThat(guess("hoursNow", "owned", "order")).isEqualTo("0");
        assertThat(guess("hoursNow", "hoursPerYear", "620")).isEqualTo("620");
        assertThat(guess("keepUntil", "hoursNow", "2100")).isEqualTo("3000");
        assertThat(guess("flats", "where", "thorns")).isEqualTo("6");
        assertThat(guess("burden", "who", "owner")).isEqualTo("0 %");
        assertThat(guess("charge", "chargePer", "crew", "people", "3")).isEqualTo("165");
        assertThat(guess("plugShare", "spareShare", "60 %", "callShare", "0 %")).isEqualTo("32 %");
        assertThat(guess("pairPrice", "driveSize", "18x8.5-8")).isEqualTo("950");
        assertThat(guess("life", "driveKind", "airless")).isEqualTo("1500");
        assertThat(guess("title", "alike", "3")).isEqualTo("One crew, three mowers");
    }

    private static String guess(String id, String... answers) {
        return Interview.guess(Interview.field(id), Answers.of(answers)).value();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            alike | 0 | from 1 to 50
            alike | 2.5 | whole number
            alike | many | whole number
            owned | rented | owned, order
            driveKind | solid | air, sealant, foam, airless
            casterKind | 9 | solid
            driveSize | 24 | 24x12-12
            casterSize | 6x13-6x | 24x12-12
            hoursNow | -1 | from 0 to 20000
            hoursNow | 1e3 | from 0 to 20000
            hoursPerYear | 0 | from 10 to 5000
            firstCut | 02-29 | 02-28 or 03-01
            lastCut | 31-10 | 04-05
            lastCut | October | 04-05
            keepUntil | NaN | from 10 to 25000
            flats | 1,5 | from 0 to 100
            where | moon | lawns
            flatsEnd | left | drives
            plugShare | 0.65 | 65 %
            spareShare | 101 % | 100 %
            shopShare | half | 15 %
            callShare | -5 % | 15 %
            plugTime | 2 | 2 min or 2 h
            plugTime | -25 min | below zero
            flats | -3 | below zero
            spareTime | 0 min | 25 min
            shopTime | 1:45 | 1 h 45 min
            callTime | 101 h | up to 100 h
            callCost | free | such as 20
            others | sleep | wait, half, on
            second | maybe | no, yes
            makeUp | never | skipped
            fullWeeks | 53 | from 0 to 52
            who | us | crew, owner
            people | 0 | from 1 to 50
            wage | =1+1 | such as 20
            burden | 301 % | 300 %
            chargePer | week | man, crew, day
            charge | 9999999 | to 1000000
            day | 25 | from 1 to 24
            currency | dollars | USD
            life | 12 | from 50 to 10000
            pavement | lots | mostly
            pairPrice | € 900 | such as 20
            """)
    void faults_oneFieldWrong_saysThereWhatWouldFit(String id, String typed, String fits) {
        Map<String, String> faults = Interview.faults(Answers.of(id, typed));

        assertThat(faults).containsOnlyKeys(id);
        assertThat(faults.get(id)).contains(fits);
        assertThatThrownBy(() -> Interview.caseText(Answers.of(id, typed), Answers.TODAY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(id);
    }

    @Test
    void faults_ofTexts_areLengthAndBrokenCharacters() {
        assertThat(Interview.faults(Answers.of("title", "x".repeat(201)))).containsOnlyKeys("title");
        assertThat(Interview.faults(Answers.of("kind", "half \uD83D"))).containsOnlyKeys("kind");
        assertThat(Interview.faults(Answers.of("kind", "x".repeat(200)))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            hoursNow=1500;keepUntil=1500 | keepUntil | above 1500
            hoursNow=0;hoursPerYear=10;keepUntil=700 | keepUntil | 70 seasons
            hoursPerYear=600;firstCut=04-05;lastCut=04-15 | lastCut | 11 days
            plugShare=60;spareShare=50 | spareShare | 10 % too much
            plugShare=60;spareShare=10;shopShare=10;callShare=10 | callShare | 10 % of the flats is missing
            chargePer=man;charge=900000;people=2 | charge | smaller amount
            """)
    void faults_answersThatDoNotGoTogether_saidAtTheLastOne(String answers, String at, String fits) {
        Map<String, String> faults = Interview.faults(Answers.of(answers.split("[=;]", -1)));

        assertThat(faults).containsOnlyKeys(at);
        assertThat(faults.get(at)).contains(fits);
    }

    @Test
    void faults_unknownField_advisesTheNearest() {
        assertThat(Interview.faults(Answers.of("flat", "3")).get("flat")).contains("did you mean \"flats\"?");
    }

    @Test
    void faults_fieldThatIsNotAsked_isNotLookedAt() {
        Map<String, String> answers = Answers.of("owned", "order", "hoursNow", "nonsense");

        assertThat(Interview.isAsked(Interview.field("hoursNow"), answers)).isFalse();
        assertThat(Interview.faults(answers)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            hoursNow | 1,100 h | 1100
            wage | $ 21.40 | 21.4
            burden | 17% | 17 %
            burden | 17 | 17 %
            shopTime | 1h45m | 105 min
            shopTime | 6 hours | 6 h
            firstCut | 4/5 | 04-05
            firstCut | April 5 | 04-05
            lastCut | 31 Oct. | 10-31
            plugTime | 35 | 35 min
            driveSize | 24 X 12.00-12 | 24x12-12
            casterKind | 4 | solid
            currency | cad | CAD
            """)
    void read_waysPeopleType_isOneWayToWrite(String id, String typed, String written) {
        assertThat(TypedText.read(Interview.field(id).shape(), typed).text()).isEqualTo(written);
    }

    @ParameterizedTest
    @MethodSource("ids")
    void fault_unknown_isNone(String id) {
        Field field = Interview.field(id);

        assertThat(List.of("", "  ", "?", " ? ")).allMatch(t -> field.fault(t).isEmpty());
    }
}
