package footing.io.form;

import java.util.List;
import java.util.stream.Collectors;

/** A node of a file's tree and the line it begins on, counted from 1. */
public sealed interface Node {
    int MOST_SHOWN = 60;

    /** Where it stands. */
    Span span();

    default int line() {
        return span().line();
    }

    /** The node in one line, as it could be written. */
    String text();

    /** The node as shown in a message: one line, clipped, nothing a terminal could trip over. */
    default String shown() {
        return shown(text());
    }

    static String shown(String text) {
        if (text.length() <= MOST_SHOWN && isPlainAscii(text)) {
            return text;
        }
        String clean = text.codePoints()
                .limit(MOST_SHOWN + 1)
                .mapToObj(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT
                        ? "\uFFFD"
                        : Character.toString(c))
                .collect(Collectors.joining());
        int end = clean.offsetByCodePoints(0, Math.min(MOST_SHOWN, clean.codePointCount(0, clean.length())));
        return end < clean.length() ? clean.substring(0, end) + "…" : clean;
    }

    private static boolean isPlainAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    /** A single value; {@code plain} if it stands without quotes. */
    record Scalar(Span span, String text, boolean plain) implements Node {
        public Scalar(int line, String text, boolean plain) {
            this(Span.onLine(line), text, plain);
        }

        /** True for what YAML takes for nothing at all. */
        public boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
        }
    }

    record Sequence(Span span, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String text() {
            return items.stream().limit(MOST_SHOWN).map(Node::shown).collect(Collectors.joining(", ", "[", "]"));
        }
    }

    /** Keys in the order of the file, each once. */
    record Mapping(Span span, List<Entry> entries) implements Node {
        public Mapping {
            entries = List.copyOf(entries);
        }

        public Mapping(int line, List<Entry> entries) {
            this(Span.onLine(line), entries);
        }

        @Override
        public String text() {
            return entries.stream()
                    .limit(MOST_SHOWN)
                    .map(e -> e.key().text() + ": " + e.value().shown())
                    .collect(Collectors.joining(", ", "{", "}"));
        }
    }

    /** A key with its value; {@code guess} if a comment of the file marks it as one. */
    record Entry(Scalar key, Node value, boolean guess) {
        public Entry(Scalar key, Node value) {
            this(key, value, false);
        }
    }

    /** What was refused before anybody looked at its meaning; its problem is already reported. */
    record Refused(Span span) implements Node {
        @Override
        public String text() {
            return "";
        }
    }
}
