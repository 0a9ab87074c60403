package footing.io.interview;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
    private static final Set<String> UNKNOWN = Set.of(
            "?", "don't know", "dont know", "do not know", "i don't know", "i dont know", "idk", "dunno", "no idea");

    static Field of(String id, String label, Shape shape, Guess guess) {
        return new Field(id, label, shape, guess, null);
    }

    Field when(OnlyIf condition) {
        return new Field(id, label, shape, guess, condition);
    }

    /** True for an answer that leaves the field to its guess: nothing, blanks, ? or 'no idea'. */
    public static boolean isUnknown(@Nullable String typed) {
        return typed == null || typed.isBlank() || UNKNOWN.contains(plain(typed));
    }

    private static String plain(String typed) {
        return typed.strip()
                .toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replaceAll("\\s+", " ")
                .replaceFirst("(?<=\\w)[.!]$", "");
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
