package footing.io.interview;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.assertj.core.api.Assertions;

/** Answers of the tests. */
final class Answers {
    static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private Answers() {}

    /** Pairs of field and typed text. */
    static Map<String, String> of(String... pairs) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            answers.put(pairs[i], pairs[i + 1]);
        }
        return answers;
    }

    /** Every field that can be asked of a hired crew with owned mowers. */
    static Map<String, String> all() {
        return of(
                "kind",
                "52 in stand-on mower",
                "alike",
                "2",
                "owned",
                "owned",
                "driveKind",
                "air",
                "casterKind",
                "air",
                "driveSize",
                "20x10.00-10",
                "casterSize",
                "11x4.00-5",
                "title",
                "Invented: the street crew",
                "hoursNow",
                "1,100",
                "hoursPerYear",
                "620 h",
                "firstCut",
                "3/22",
                "lastCut",
                "11-14",
                "keepUntil",
                "1800",
                "flats",
                "4",
                "flatsEnd",
                "drives",
                "plugShare",
                "50 %",
                "plugTime",
                "30 min",
                "spareShare",
                "30%",
                "spareTime",
                "15 min",
                "shopShare",
                "15",
                "shopTime",
                "1 h 30 min",
                "callShare",
                "5 %",
                "callTime",
                "3 h",
                "callCost",
                "$180",
                "others",
                "half",
                "second",
                "yes",
                "makeUp",
                "late",
                "fullWeeks",
                "6",
                "who",
                "crew",
                "people",
                "3",
                "wage",
                "21.40",
                "burden",
                "17 %",
                "chargePer",
                "crew",
                "charge",
                "174",
                "day",
                "9.5",
                "currency",
                "usd",
                "life",
                "700",
                "pavement",
                "mostly",
                "pairPrice",
                "1,180");
    }

    static Case read(Map<String, String> answers) {
        return accepted(Interview.caseText(answers, TODAY));
    }

    static Case accepted(String text) {
        Reading reading = CaseFile.read(text, "new.yaml");
        Assertions.assertThat(reading.problems()).as(text).isEmpty();
        return reading.found().orElseThrow();
    }

    static Answer answered(Map<String, String> answers) {
        return Assessment.answer(read(answers), Options.usual().withFutures(20).quickly(), Workers.one(), Watch.NOBODY);
    }
}
