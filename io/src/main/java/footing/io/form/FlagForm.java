package footing.io.form;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** True or false. */
public record FlagForm() implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable Boolean read(Node node, At at, Problems problems) {
        if (node instanceof Node.Scalar s && s.plain()) {
            if (s.text().equals("true")) {
                return Boolean.TRUE;
            }
            if (s.text().equals("false")) {
                return Boolean.FALSE;
            }
        }
        Form.wrongShape(
                node, at, problems, "yes or no is written as true or false, without quotes", "try: true, false");
        return null;
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("type", "boolean");
    }

    @Override
    public String example() {
        return "true";
    }
}
