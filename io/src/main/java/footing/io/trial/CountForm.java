package footing.io.trial;

import footing.io.form.At;
import footing.io.form.Form;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A bare number from zero up: a count, a rating, an exponent. */
record CountForm() implements Form {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(?:\\.\\d{0,9})?");
    private static final double MOST = 1e6;

    @Override
    public void check(Node node, At at, Problems problems) {
        if (read(node) == null) {
            Form.wrongShape(node, at, problems, "a plain number is due, from 0 to 1000000", "try: " + example());
        }
    }

    static @Nullable Double read(@Nullable Node node) {
        if (node instanceof Node.Scalar s && NUMBER.matcher(s.text()).matches()) {
            double value = Double.parseDouble(s.text());
            return value <= MOST ? value : null;
        }
        return null;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "number");
        schema.put("minimum", 0);
        schema.put("maximum", MOST);
        return schema;
    }

    @Override
    public String example() {
        return "7";
    }
}
