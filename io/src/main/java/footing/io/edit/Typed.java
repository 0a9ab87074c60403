package footing.io.edit;

import footing.core.fleet.Key;
import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Node;
import footing.io.form.NumberForm;
import footing.io.form.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed, as a node.
 *
 * @param verbatim how it was typed, where that can stand in a file as it is; empty otherwise
 */
record Typed(Node node, String verbatim) {
    private static final int LONGEST = 4000;
    private static final int LONGEST_NUMBER = 200;
    private static final List<String> NAMES = List.of("low", "likely", "high");
    private static final Pattern OTHER_BLANKS = Pattern.compile("[\\u00A0\\u2007\\u2009\\u202F]");

    /** What was typed where a key's number goes; null if it doesn't fit, with its problem reported. */
    static @Nullable Typed number(Key key, String typed, At at, Problems problems) {
        String text = OTHER_BLANKS.matcher(typed).replaceAll(" ").strip();
        if (text.length() > LONGEST_NUMBER || text.chars().anyMatch(Character::isISOControl)) {
            problems.error(at, text, "a number is one short line", "type one value, or low / likely / high");
            return null;
        }
        Typed found = text.startsWith("{") ? collection(text, at, problems) : plain(text);
        Typed whole = found == null ? null : found.completed(key);
        return whole != null && new NumberForm(key).read(whole.node(), at, problems) != null ? whole : null;
    }

    /** What was typed elsewhere: a list or group in brackets, a text in quotes, or just a text. */
    static @Nullable Typed other(String typed, At at, Problems problems) {
        String text = typed.strip();
        if (text.length() > LONGEST) {
            problems.error(at, text, "longer than " + LONGEST + " characters", "make it shorter");
            return null;
        }
        boolean bracket = text.startsWith("{") || text.startsWith("[");
        boolean quoted = text.length() > 1
                && (text.startsWith("\"") || text.startsWith("'"))
                && text.charAt(0) == text.charAt(text.length() - 1);
        return bracket || quoted
                ? collection(text, at, problems)
                : new Typed(new Node.Scalar(at.line(), text, Writing.isPlain(text)), "");
    }

    private static Typed plain(String text) {
        String[] parts = text.split("/", -1);
        if (parts.length != NAMES.size()) {
            return new Typed(new Node.Scalar(1, text, true), "");
        }
        String unit = Completion.unit(parts[2]);
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            String part = parts[i].strip();
            String value = Completion.isBare(part) && !unit.isEmpty() ? part + " " + unit : part;
            entries.add(new Node.Entry(new Node.Scalar(1, NAMES.get(i), true), new Node.Scalar(1, value, true)));
        }
        return new Typed(new Node.Mapping(1, entries), "");
    }

    private static @Nullable Typed collection(String text, At at, Problems problems) {
        Problems inside = new Problems("");
        Node node = FileText.tree(text, inside);
        if (node == null || inside.hasErrors()) {
            String advice = "check the brackets, the commas and the quotes";
            inside.errors()
                    .forEach(p ->
                            problems.error(at, text, p.message(), p.advice().isEmpty() ? advice : p.advice()));
            return null;
        }
        boolean whole = text.codePointCount(0, text.length()) == node.span().end();
        return new Typed(node, whole && text.chars().noneMatch(Character::isISOControl) ? text : "");
    }

    private Typed completed(Key key) {
        if (node instanceof Node.Scalar one) {
            String text = Completion.of(key, List.of(one.text())).get(0);
            return new Typed(new Node.Scalar(one.span(), text, one.plain()), verbatim);
        }
        if (!(node instanceof Node.Mapping mapping)
                || !mapping.entries().stream().allMatch(e -> e.value() instanceof Node.Scalar)) {
            return this;
        }
        List<String> given =
                mapping.entries().stream().map(e -> e.value().text()).toList();
        List<String> whole = Completion.of(key, given);
        if (whole.equals(given)) {
            return this;
        }
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < whole.size(); i++) {
            entries.add(new Node.Entry(mapping.entries().get(i).key(), new Node.Scalar(1, whole.get(i), true)));
        }
        return new Typed(new Node.Mapping(1, entries), "");
    }
}
