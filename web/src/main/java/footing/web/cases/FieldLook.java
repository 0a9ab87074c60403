package footing.web.cases;

import footing.io.interview.Field;
import footing.io.interview.Interview;
import java.util.Map;

/**
 * How a field stands beside the other answers.
 *
 * @param asked false if it has no meaning beside them
 * @param guess what is taken if it is left open, with its unit
 * @param from how to find out, and where the guess comes from unless it is common practice
 * @param fault what is wrong with what was typed, and what would fit; empty if nothing is
 * @param unit shown behind the box; for amounts the currency
 */
record FieldLook(boolean asked, String guess, String from, String fault, String unit) {
    /** What stands behind most guesses, and is said once for all of them. */
    private static final String PRACTICE = "common practice, no source";

    static FieldLook of(Field field, Map<String, String> answers, Map<String, String> faults) {
        Interview.Taken guess = Interview.guess(field, answers);
        boolean isPractice = field.guess().from().equals(PRACTICE);
        String from = isPractice ? field.guess().ask() : guess.from();
        return new FieldLook(
                Interview.isAsked(field, answers),
                guess.shown(),
                from,
                faults.getOrDefault(field.id(), ""),
                Interview.unit(field, answers));
    }
}
