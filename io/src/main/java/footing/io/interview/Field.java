package footing.io.interview;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing to be typed or chosen.
 *
 * @param label in front of it
 * @param guess taken for 'don't know', which always is an answer
 * @param onlyIf when it is worth asking; null for always
 */
public record Field(
        String id,
        String label,
        Shape shape,
        Guess guess,
        @Nullable OnlyIf onlyIf) {
    static Field of(String id, String label, Shape shape, Guess guess) {
        return new Field(id, label, shape, guess, null);
    }

    Field when(OnlyIf condition) {
        return new Field(id, label, shape, guess, condition);
    }

    /** True for an answer that leaves the field to its guess: nothing, blanks or a question mark. */
    public static boolean isUnknown(@Nullable String typed) {
        return typed == null || typed.isBlank() || typed.strip().equals("?");
    }

    /** What is wrong with a typed text, and what would fit; empty if nothing is, as for 'don't know'. */
    public Optional<String> fault(String typed) {
        if (isUnknown(typed)) {
            return Optional.empty();
        }
        String fault = TypedText.read(shape, typed).fault();
        return fault.isEmpty() ? Optional.empty() : Optional.of(fault);
    }
}
