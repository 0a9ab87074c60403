package footing.io.form;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One of a few words. */
public record WordForm(List<String> words) implements Form {
    public WordForm {
        words = List.copyOf(words);
    }

    public static WordForm of(String... words) {
        return new WordForm(List.of(words));
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable String read(Node node, At at, Problems problems) {
        if (node instanceof Node.Scalar scalar && words.contains(scalar.text())) {
            return scalar.text();
        }
        String advice = node instanceof Node.Scalar s
                        && !s.isNothing()
                        && Nearest.find(s.text(), words).isPresent()
                ? Nearest.advice(s.text(), words)
                : "try: " + String.join(", ", words);
        Form.wrongShape(node, at, problems, words.size() > 1 ? "one of a few words is due" : "not known here", advice);
        return null;
    }

    @Override
    public Map<String, Object> schema() {
        return Schemas.words(words);
    }

    @Override
    public String example() {
        return words.get(0);
    }
}
