package footing.io.proposal;

import footing.io.drawing.SvgDrawer;
import footing.io.figure.Figure;
import footing.io.paper.Markup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The document as it is written: headings, sentences, tables and figures, and which tables have been in it. */
final class Pages {
    /** Width a figure is drawn for, in pixels, and the share of it that it is printed at. */
    private static final int DRAWN = 640;

    /** Room at either side for labels that stand over the edge. */
    private static final int EDGE = 20;

    private static final double PRINTED = 0.88;
    private static final int TALLEST = 900;
    private static final int DENSE = 60;

    /** Set before each item by us: written by the style sheet, the press would tag it as an item of its own. */
    private static final String DASH = "–\u00A0\u00A0";

    private static final Pattern START =
            Pattern.compile("<svg width=\"[0-9.]+\" height=\"[0-9.]+\"[^>]*? viewBox=\"[^\"]*\"");

    private final Markup out;
    private final SvgDrawer drawer;
    private int figures;

    Pages(Markup out, SvgDrawer drawer) {
        this.out = out;
        this.drawer = drawer;
    }

    Markup out() {
        return out;
    }

    void heading(String level, String text) {
        out.element(level, text);
    }

    void paragraph(String text, String style) {
        if (!text.isEmpty()) {
            out.element("p", Cell.minus(text), "class", style);
        }
    }

    void list(List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        out.open("ul");
        items.forEach(i -> out.element("li", DASH + i));
        out.close();
    }

    /** A table under its title; nothing where it is empty. */
    void table(Table table) {
        if (table.isEmpty()) {
            return;
        }
        out.open("div", "class", table.rows().size() <= 12 ? "part whole" : "part");
        out.element("h3", table.title());
        bare(table);
        out.close();
    }

    void bare(Table table) {
        boolean side = table.id().equals(AssumptionGrid.ID);
        out.open("table", "class", side ? "side" : table.rows().size() > DENSE ? "dense" : "plain");
        out.open("thead").open("tr");
        table.columns().forEach(c -> out.element("th", c.head(), "class", c.numbers() ? "n" : "t", "scope", "col"));
        out.close().close().open("tbody");
        for (List<Cell> row : table.rows()) {
            out.open("tr");
            for (int i = 0; i < row.size(); i++) {
                String edge = table.columns().get(i).numbers() ? "n" : "t";
                out.element("td", row.get(i).shown(), "class", edge + (!side && table.isNarrow(i) ? " whole" : ""));
            }
            out.close();
        }
        out.close().close();
    }

    /** A figure under its title, what it shows told below it; left out, and said so, where no page would hold it. */
    void figure(Figure figure) {
        out.open("div", "class", "part whole");
        out.element("h3", figure.title());
        out.element("p", figure.caption(), "class", "caption");
        SvgDrawer.Drawn drawn = drawer.draw(figure, DRAWN);
        if (drawn.height() > TALLEST) {
            out.element("p", "There are more lines in it than a page holds; the table has them all.", "class", "note");
        } else {
            out.raw(sized(drawn, figure));
            figures++;
        }
        out.close();
    }

    int figures() {
        return figures;
    }

    private static String sized(SvgDrawer.Drawn drawn, Figure figure) {
        int width = drawn.width() + 2 * EDGE;
        String start = String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" alt=\"%s\" class=\"figure\" width=\"%d\" height=\"%d\" viewBox=\"%d 0 %d %d\"",
                plain(figure),
                Math.round(width * PRINTED),
                Math.round(drawn.height() * PRINTED),
                -EDGE,
                width,
                drawn.height());
        return START.matcher(drawn.svg()).replaceFirst(Matcher.quoteReplacement(start));
    }

    private static String plain(Figure figure) {
        List<String> words = new ArrayList<>(List.of(figure.title(), figure.caption()));
        return String.join(". ", words)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("\"", "&quot;");
    }
}
