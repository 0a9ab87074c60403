package footing.io.form;

import java.util.List;
import java.util.Map;

/** A word, a list or a group: whichever somebody chooses to write. */
public record ShapeForm(Form word, Form list, Form group) implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        if (node instanceof Node.Mapping) {
            group.check(node, at, problems);
        } else if (node instanceof Node.Scalar s && !s.isNothing()) {
            word.check(node, at, problems);
        } else {
            list.check(node, at, problems);
        }
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("anyOf", List.of(word.schema(), list.schema(), group.schema()));
    }

    @Override
    public String example() {
        return list.example();
    }
}
