package footing.io.edit;

import footing.io.form.Node;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes nodes on one line, in the manner of the file they go to.
 *
 * @param json true for a file whose keys are quoted: JSON stays JSON
 */
record Writing(boolean json) {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Pattern JSON_NUMBER = Pattern.compile("-?(?:0|[1-9]\\d*)(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\d+.-](?:[\\p{L}\\d ./%()+_-]*[\\p{L}\\d./%()+_-])?");

    static Writing of(Node root) {
        return new Writing(root instanceof Node.Mapping m
                && !m.entries().isEmpty()
                && m.entries().stream().noneMatch(e -> e.key().plain()));
    }

    /** True if a text can stand without quotes in a YAML file and stays one text. */
    static boolean isPlain(String text) {
        return PLAIN.matcher(text).matches() && !text.startsWith("- ") && !text.startsWith("---") && !text.equals("-");
    }

    String write(Typed typed) {
        boolean asItIs = !typed.verbatim().isEmpty() && (!json || isJson(typed.verbatim()));
        return asItIs ? typed.verbatim() : write(typed.node());
    }

    String write(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().stream()
                    .map(e -> entry(e.key().text(), write(e.value())))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(this::write).collect(Collectors.joining(", ", "[", "]"));
        }
        return node instanceof Node.Scalar scalar ? scalar(scalar) : "";
    }

    String entry(String key, String value) {
        return (json || !isPlain(key) ? quoted(key) : key) + ": " + value;
    }

    /** A value in the quotes of the one it takes the place of, unless it is one that must go without. */
    String inPlaceOf(Node.Scalar before, Node.Scalar scalar, char mark) {
        boolean number = scalar.plain() && JSON_NUMBER.matcher(scalar.text()).matches();
        if (before.plain() || number || json) {
            return scalar(scalar);
        }
        return mark == '\'' && scalar.text().chars().noneMatch(Character::isISOControl)
                ? "'" + scalar.text().replace("'", "''") + "'"
                : quoted(scalar.text());
    }

    private String scalar(Node.Scalar scalar) {
        String text = scalar.text();
        if (!json) {
            return scalar.plain() && isPlain(text) ? text : quoted(text);
        }
        if (scalar.plain() && (text.equals("true") || text.equals("false"))) {
            return text;
        }
        return scalar.plain() ? jsonNumber(text).orElseGet(() -> quoted(text)) : quoted(text);
    }

    /** A bare number as JSON writes it: no plus sign, a digit on either side of the point. */
    private static Optional<String> jsonNumber(String text) {
        String sign = text.startsWith("-") ? "-" : "";
        String digits = text.startsWith("-") || text.startsWith("+") ? text.substring(1) : text;
        digits = digits.startsWith(".") ? "0" + digits : digits;
        digits = digits.replaceFirst("\\.(?=$|[eE])", "").replaceFirst("^0+(?=\\d)", "");
        return JSON_NUMBER.matcher(sign + digits).matches() ? Optional.of(sign + digits) : Optional.empty();
    }

    private static String quoted(String text) {
        return JSON.writeValueAsString(text);
    }

    private static boolean isJson(String text) {
        try {
            return JSON.readTree(text) != null;
        } catch (JacksonException e) {
            return false;
        }
    }
}
