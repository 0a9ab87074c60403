package footing.io.form;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Key;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A value taken from the case's records: {@code {learned: flats}} or {@code {learned: life}}. What it reads as stands in
 * until the records are read, and is as wide as knowing nothing is.
 */
final class LearnedForm {
    private static final String NAME = "learned";

    private LearnedForm() {}

    static boolean isLearned(@Nullable Node node) {
        return node instanceof Node.Mapping mapping
                && mapping.entries().stream().anyMatch(e -> e.key().text().equals(NAME));
    }

    /** What may be learned for a key; empty if nothing. */
    static Optional<String> word(Key key) {
        return switch (key) {
            case FLATS_PER_SEASON, FLATS_PER_1000H -> Optional.of("flats");
            case LIFE -> Optional.of("life");
            default -> Optional.empty();
        };
    }

    static @Nullable Spread read(Key key, Node.Mapping mapping, At at, Problems problems) {
        Optional<String> word = word(key);
        if (word.isEmpty()) {
            problems.error(at, mapping, "no records teach this", "try: " + NumberForm.example(key));
            return null;
        }
        boolean alone = mapping.entries().size() == 1
                && mapping.entries().get(0).value() instanceof Node.Scalar what
                && what.text().equals(word.get());
        if (!alone) {
            problems.error(
                    at, mapping, "only " + word.get() + " can be learned here", "try: {learned: " + word.get() + "}");
            return null;
        }
        return key == Key.LIFE
                ? new Metalog(300, 800, 2000, Bounds.POSITIVE)
                : new Metalog(0.5, 3, 15, Bounds.POSITIVE);
    }
}
