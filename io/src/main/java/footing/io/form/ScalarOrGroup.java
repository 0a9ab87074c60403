package footing.io.form;

import java.util.List;
import java.util.Map;

/** One value, or a group that says more of it. */
public record ScalarOrGroup(Form one, GroupForm group) implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        (node instanceof Node.Mapping ? group : one).check(node, at, problems);
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("anyOf", List.of(one.schema(), group.schema()));
    }

    @Override
    public String example() {
        return one.example();
    }
}
