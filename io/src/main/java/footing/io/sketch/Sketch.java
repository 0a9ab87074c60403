package footing.io.sketch;

import java.util.Locale;

/**
 * A drawing: what it is called, what it shows in words for those who can't see it, and its marks.
 *
 * @param width of its sheet in units of about a pixel; no drawing is wider than a phone
 * @param marks SVG inside the root element, in the current color
 */
public record Sketch(String title, String told, int width, int height, String marks) {
    /** Wide enough for a phone without being made smaller. */
    static final int WIDE = 320;

    private static final String FACE = "Liberation Sans";

    public Sketch {
        if (!(width > 0 && height > 0)) {
            throw new IllegalArgumentException("a sheet of " + width + " x " + height);
        }
    }

    /** As an image within a page, in whatever color the text around it has. */
    public String onPage() {
        return "<svg class=\"sketch\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\" aria-label=\""
                + Pen.escaped(title + ". " + told) + "\" font-size=\"" + Pen.TEXT + "\">" + marks + "</svg>";
    }

    /**
     * As an image on paper.
     *
     * @param share of its own size at which it is printed
     */
    public String onPaper(double share) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sketch\" alt=\"%s\" width=\"%d\" height=\"%d\""
                        + " viewBox=\"0 0 %d %d\" color=\"#111111\" font-family=\"%s\" font-size=\"%s\">%s</svg>",
                Pen.escaped(title + ". " + told),
                Math.round(width * share),
                Math.round(height * share),
                width,
                height,
                FACE,
                Pen.TEXT,
                marks);
    }
}
