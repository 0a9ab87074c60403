package footing.io.card;

import footing.io.paper.Markup;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes the card's parts: headings, sentences, tables, boxes to write in. */
final class Sheet {
    private final Markup out;

    Sheet(Markup out) {
        this.out = out;
    }

    /** How cards look. */
    static String style() {
        try (InputStream in = Sheet.class.getResourceAsStream("card.css")) {
            if (in == null) {
                throw new IllegalStateException("the style of the cards is missing from this build");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Markup out() {
        return out;
    }

    void head(String text) {
        out.element("h2", text);
    }

    void paragraph(String text, String style) {
        out.element("p", text, "class", style);
    }

    void list(List<String> items) {
        if (!items.isEmpty()) {
            out.open("ul");
            items.forEach(i -> out.element("li", i));
            out.close();
        }
    }

    void table(List<String> heads, List<List<String>> rows) {
        out.open("table").open("thead").open("tr");
        heads.forEach(h -> out.element("th", h, "scope", "col"));
        out.close().close().open("tbody");
        for (List<String> row : rows) {
            out.open("tr");
            row.forEach(c -> out.element("td", c));
            out.close();
        }
        out.close().close();
    }

    /** Labels, what is known, and a box beside each to write in; two to a line. */
    void boxes(List<List<String>> labels) {
        out.open("table").open("tbody");
        for (int i = 0; i < labels.size(); i += 2) {
            out.open("tr");
            for (int j = i; j < i + 2; j++) {
                List<String> one = j < labels.size() ? labels.get(j) : List.of("", "");
                out.element("td", one.get(0));
                out.element("td", one.get(1), "class", j < labels.size() ? "box" : "none");
            }
            out.close();
        }
        out.close().close();
    }
}
