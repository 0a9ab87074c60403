package footing.io.interview;

import java.util.List;

/**
 * A question of the interview.
 *
 * @param text as an adviser would ask it across a counter
 * @param why what the answer is good for
 */
public record Question(String id, String text, String why, List<Field> fields) {
    public Question {
        fields = List.copyOf(fields);
    }

    static Question of(String id, String text, String why, Field... fields) {
        return new Question(id, text, why, List.of(fields));
    }
}
