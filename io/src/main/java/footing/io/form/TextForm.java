package footing.io.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A text that isn't blank; with {@code id}, one short line without blanks around it. A bare number is taken as text. */
public record TextForm(boolean id, String example) implements Form {
    /** What YAML takes for something else than text. */
    private static final Set<String> OTHER_VALUES = Set.of("true", "false", ".nan", ".inf", "-.inf", "+.inf");

    static final int LONGEST = 4000;
    static final int LONGEST_ID = 80;

    public static TextForm text(String example) {
        return new TextForm(false, example);
    }

    public static TextForm id(String example) {
        return new TextForm(true, example);
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable String read(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            Form.wrongShape(node, at, problems, "a text is due", "try: " + example);
            return null;
        }
        boolean other = scalar.plain() && OTHER_VALUES.contains(scalar.text().toLowerCase(Locale.ROOT));
        String fault = other ? "a text like this needs quotes" : fault(scalar.text());
        if (!fault.isEmpty()) {
            problems.error(at, scalar, fault, other ? "try: \"" + scalar.text() + "\"" : advice());
            return null;
        }
        return scalar.text();
    }

    /** What is wrong with a text; empty if nothing is. */
    String fault(String text) {
        if (text.isBlank()) {
            return "a blank text says nothing";
        }
        int most = id ? LONGEST_ID : LONGEST;
        if (text.length() > most) {
            return "longer than " + most + " characters";
        }
        if (id && (!text.equals(text.strip()) || text.chars().anyMatch(Character::isISOControl))) {
            return "an id is one line without blanks around it";
        }
        return "";
    }

    private String advice() {
        return "try: " + example;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("type", List.of("string", "number"));
        text.putAll(limits());
        return text;
    }

    /** What a text of this kind must match; numbers pass. */
    Map<String, Object> limits() {
        Map<String, Object> limits = new LinkedHashMap<>();
        limits.put("maxLength", id ? LONGEST_ID : LONGEST);
        limits.put("pattern", id ? "^\\S(?:[^\\r\\n\\t]*\\S)?$" : "\\S");
        return limits;
    }
}
