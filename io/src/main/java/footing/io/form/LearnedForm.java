package footing.io.form;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Key;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A value taken from the case's records: {@code {learned: flats}} or {@code {learned: life}}. What it reads as stands in
 * until the records are read, and is as wide as knowing nothing is. A fix keeps what was stated of it, {@code {learned:
 * share, stated: 60 %}} and {@code {learned: delay, stated: 25 min}}: records add to that share, and it is the delay as
 * long as they hold too few.
 */
public final class LearnedForm {
    private static final String NAME = "learned";
    private static final String STATED = "stated";

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
            case FIX_SHARE -> Optional.of("share");
            case DELAY -> Optional.of("delay");
            default -> Optional.empty();
        };
    }

    /** True if what was stated stays beside the word. */
    static boolean keepsStated(Key key) {
        return key == Key.FIX_SHARE || key == Key.DELAY;
    }

    /** How a learned value of a key is written, with what was stated where that is kept. */
    public static Optional<String> written(Key key, String stated) {
        return word(key)
                .map(w -> keepsStated(key) ? "{learned: " + w + ", stated: " + stated + "}" : "{learned: " + w + "}");
    }

    static @Nullable Spread read(Key key, Node.Mapping mapping, At at, Problems problems) {
        Optional<String> word = word(key);
        if (word.isEmpty()) {
            problems.error(at, mapping, "no records teach this", "try: " + NumberForm.example(key));
            return null;
        }
        Node.Entry what = entry(mapping, NAME);
        Node.Entry stated = entry(mapping, STATED);
        boolean whole = mapping.entries().size() == (keepsStated(key) ? 2 : 1)
                && what != null
                && what.value() instanceof Node.Scalar name
                && name.text().equals(word.get())
                && (stated != null) == keepsStated(key)
                && !isLearned(stated == null ? null : stated.value());
        if (!whole) {
            String example = key == Key.DELAY ? NumberForm.threePointExample(key) : NumberForm.example(key);
            problems.error(
                    at,
                    mapping,
                    "only " + word.get() + " can be learned here" + (keepsStated(key) ? ", beside what is stated" : ""),
                    "try: " + written(key, example).orElse(""));
            return null;
        }
        if (stated != null) {
            return new NumberForm(key).read(stated.value(), at.key(stated.key().line(), STATED), problems);
        }
        return key == Key.LIFE
                ? new Metalog(300, 800, 2000, Bounds.POSITIVE)
                : new Metalog(0.5, 3, 15, Bounds.POSITIVE);
    }

    private static Node.@Nullable Entry entry(Node.Mapping mapping, String name) {
        return mapping.entries().stream()
                .filter(e -> e.key().text().equals(name))
                .findFirst()
                .orElse(null);
    }
}
