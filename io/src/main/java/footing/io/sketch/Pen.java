package footing.io.sketch;

import java.util.List;
import java.util.Locale;

/** Draws in the current color. Numbers are rounded to a tenth of a unit. */
final class Pen {
    /** Not 12: what prints it makes text of 12 units one unit high. */
    static final String TEXT = "11";

    /** How a line is drawn; each can be told from the others in black and white. */
    enum Line {
        /** What is now, or will be. */
        IS("stroke-width=\"1.8\""),
        /** What was. */
        WAS("stroke-width=\"1.2\" stroke-dasharray=\"5 3\""),
        /** What is wanted. */
        WANTED("stroke-width=\"1.6\" stroke-dasharray=\"1.6 3\" stroke-linecap=\"round\""),
        /** The ground, and other things that stand still. */
        FIRM("stroke-width=\"1.2\""),
        /** Measures and helping lines. */
        THIN("stroke-width=\"0.8\" stroke-opacity=\"0.7\"");

        private final String attributes;

        Line(String attributes) {
            this.attributes = attributes;
        }
    }

    /** Where a text stands from its point. */
    enum Side {
        RIGHT("start"),
        MIDDLE("middle"),
        LEFT("end");

        private final String anchor;

        Side(String anchor) {
            this.anchor = anchor;
        }
    }

    /** A place on the sheet. */
    record Spot(double x, double y) {
        Spot plus(double dx, double dy) {
            return new Spot(x + dx, y + dy);
        }
    }

    private final StringBuilder out = new StringBuilder(2000);

    Pen line(Spot from, Spot to, Line line) {
        return mark(
                "line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"",
                line, false, number(from.x()), number(from.y()), number(to.x()), number(to.y()));
    }

    Pen circle(Spot middle, double radius, Line line, boolean shaded) {
        return mark(
                "circle cx=\"%s\" cy=\"%s\" r=\"%s\"",
                line, shaded, number(middle.x()), number(middle.y()), number(radius));
    }

    /** A line through points, closed to an outline. */
    Pen outline(List<Spot> points, Line line, boolean shaded) {
        return mark("path d=\"%s\"", line, shaded, joined(points) + "Z");
    }

    /** A line through points. */
    Pen through(List<Spot> points, Line line) {
        return mark("path d=\"%s\"", line, false, joined(points));
    }

    private static String joined(List<Spot> points) {
        StringBuilder path = new StringBuilder("M");
        points.forEach(p ->
                path.append(number(p.x())).append(' ').append(number(p.y())).append('L'));
        return path.substring(0, path.length() - 1);
    }

    /** An arrow with its head at {@code to}, along the sheet's axes or any other way. */
    Pen arrow(Spot from, Spot to) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double dx = 5 * (from.x() - to.x()) / length;
        double dy = 5 * (from.y() - to.y()) / length;
        line(from, to, Line.FIRM);
        return through(List.of(to.plus(dx - dy / 2, dy + dx / 2), to, to.plus(dx + dy / 2, dy - dx / 2)), Line.FIRM);
    }

    /** A filled spot. */
    Pen dot(Spot middle, double radius) {
        out.append("<circle cx=\"")
                .append(number(middle.x()))
                .append("\" cy=\"")
                .append(number(middle.y()))
                .append("\" r=\"")
                .append(number(radius))
                .append("\" fill=\"currentColor\"/>");
        return this;
    }

    Pen text(Spot at, Side side, String text) {
        out.append("<text x=\"")
                .append(number(at.x()))
                .append("\" y=\"")
                .append(number(at.y()))
                .append("\" text-anchor=\"")
                .append(side.anchor)
                .append("\" fill=\"currentColor\">")
                .append(escaped(text))
                .append("</text>");
        return this;
    }

    private Pen mark(String element, Line line, boolean shaded, Object... values) {
        out.append('<')
                .append(String.format(Locale.ROOT, element, values))
                .append(" stroke=\"currentColor\" ")
                .append(line.attributes)
                .append(shaded ? " fill=\"currentColor\" fill-opacity=\"0.14\"" : " fill=\"none\"")
                .append("/>");
        return this;
    }

    String marks() {
        return out.toString();
    }

    private static String number(double x) {
        if (!(Math.abs(x) < 1e5)) {
            throw new IllegalArgumentException("no place on a sheet: " + x);
        }
        String text = String.format(Locale.ROOT, "%.1f", x);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
