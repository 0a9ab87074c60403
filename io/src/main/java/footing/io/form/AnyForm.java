package footing.io.form;

import java.util.Map;

/** Whatever one cares to write; looked at by nobody yet. */
public record AnyForm() implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {}

    @Override
    public Map<String, Object> schema() {
        return Map.of();
    }

    @Override
    public String example() {
        return "";
    }
}
