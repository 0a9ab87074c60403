package footing.web.cases;

import footing.io.interview.Field;
import footing.io.interview.Interview;
import java.util.Map;

/**
 * How a field stands beside the other answers.
 *
 * @param asked false if it has no meaning beside them
 * @param guess what is taken if it is left open, with its unit
 * @param from where the guess comes from and who would know better
 * @param fault what is wrong with what was typed, and what would fit; empty if nothing is
 */
record FieldLook(boolean asked, String guess, String from, String fault) {
    static FieldLook of(Field field, Map<String, String> answers, Map<String, String> faults) {
        Interview.Taken guess = Interview.guess(field, answers);
        return new FieldLook(
                Interview.isAsked(field, answers), guess.shown(), guess.from(), faults.getOrDefault(field.id(), ""));
    }
}
