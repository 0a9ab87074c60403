package footing.io.interview;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** Answers together with the guesses that stand for the rest. */
public final class Given {
    private final Map<String, Field> fields;
    private final Map<String, String> answers;
    private final Map<String, Read> known = new LinkedHashMap<>();
    private final Map<String, Boolean> yours = new LinkedHashMap<>();

    Given(Map<String, Field> fields, Map<String, String> answers) {
        this.fields = fields;
        this.answers = answers;
    }

    /** True if the field is worth asking beside the other answers. */
    boolean isAsked(Field field) {
        OnlyIf condition = field.onlyIf();
        return condition == null || condition.holdsFor(this);
    }

    /** True for a value somebody typed and that can be read. */
    boolean isYours(String id) {
        Boolean before = yours.get(id);
        if (before == null) {
            before = isTypedAndReadable(id);
            yours.put(id, before);
        }
        return before;
    }

    private boolean isTypedAndReadable(String id) {
        Field field = field(id);
        String typed = answers.get(id);
        return !Field.isUnknown(typed)
                && isAsked(field)
                && TypedText.read(field.shape(), Objects.requireNonNull(typed)).isFine();
    }

    /** The value in its one way to write it: what was typed, else the guess. */
    String text(String id) {
        return read(id).text();
    }

    /** The value as a number, in percent or minutes where it has a unit. */
    BigDecimal number(String id) {
        return read(id).number();
    }

    boolean is(String id, String value) {
        return text(id).equals(value);
    }

    private Read read(String id) {
        Read before = known.get(id);
        if (before == null) {
            Field field = field(id);
            String value = isYours(id)
                    ? Objects.requireNonNull(answers.get(id))
                    : field.guess().rule().apply(this);
            before = TypedText.read(field.shape(), value);
            if (!before.isFine()) {
                throw new IllegalStateException("the guess for " + id + ": " + before.fault());
            }
            known.put(id, before);
        }
        return before;
    }

    Field field(String id) {
        Field field = fields.get(id);
        if (field == null) {
            throw new IllegalArgumentException("no such field: " + id);
        }
        return field;
    }
}
