package footing.io.paper;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes XHTML an element at a time. Text and attributes are escaped, letters no typeface has are replaced by a visible
 * {@link Typefaces#MISSING}, and every element is closed.
 */
public final class Markup {
    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();
    private final Typefaces typefaces;

    public Markup(Typefaces typefaces) {
        this.typefaces = typefaces;
    }

    /**
     * Opens an element.
     *
     * @param attributes names and values in turn
     */
    public Markup open(String element, String... attributes) {
        start(element, attributes);
        out.append('>');
        open.push(element);
        return this;
    }

    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    public Markup text(String text) {
        escape(text);
        return this;
    }

    /** An element with nothing but text in it. */
    public Markup element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    public Markup empty(String element, String... attributes) {
        start(element, attributes);
        out.append("/>");
        return this;
    }

    /** Markup of our own making, as it is. */
    public Markup raw(String markup) {
        out.append(markup);
        return this;
    }

    /** All of it; every element must have been closed. */
    public String written() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    private void start(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\t', '\n', '\r' -> out.append(' ');
                default -> out.appendCodePoint(typefaces.shown(c));
            }
        });
    }
}
