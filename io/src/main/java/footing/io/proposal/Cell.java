package footing.io.proposal;

import footing.io.words.Figures;
import footing.io.words.Odds;
import org.jspecify.annotations.Nullable;

/**
 * A cell of a table: what a reader sees, and the number behind it where there is one.
 *
 * @param number as a file of values has it, not rounded
 */
record Cell(String shown, @Nullable Double number) {
    static final Cell EMPTY = new Cell("", null);

    static Cell text(String text) {
        return new Cell(text, null);
    }

    /** Whole units of money. */
    static Cell money(double x) {
        return new Cell(minus(Figures.money(x)), x);
    }

    /** A price, with cents where it has some. */
    static Cell price(double x) {
        return new Cell(minus(x == Math.rint(x) ? Figures.money(x) : Figures.rate(x)), x);
    }

    static Cell odds(double chance) {
        return new Cell(Odds.column(chance), chance);
    }

    static Cell count(double x) {
        return new Cell(Figures.count(x), x);
    }

    static Cell meter(double hours) {
        return new Cell(Figures.money(hours) + " h", hours);
    }

    /** A minus sign in place of a hyphen before a digit. */
    static String minus(String text) {
        return text.startsWith("-") ? "−" + text.substring(1) : text;
    }
}
