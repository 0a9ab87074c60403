package footing.io.paper;

import java.util.Locale;
import java.util.Optional;

/** A size of paper, in millimeters. */
public enum Paper {
    LETTER(215.9, 279.4),
    A4(210, 297);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** By its name in any case; empty if there is none of that name. */
    public static Optional<Paper> named(String name) {
        for (Paper p : values()) {
            if (p.name().equals(name.toUpperCase(Locale.ROOT))) {
                return Optional.of(p);
            }
        }
        return Optional.empty();
    }

    /** What people use who measure in these units. */
    public static Paper usual(boolean si) {
        return si ? A4 : LETTER;
    }
}
