package footing.cli.text;

import footing.core.answer.Saving;
import footing.io.words.Figures;
import java.util.Arrays;
import java.util.Collection;

/** A saving drawn from its 10th to its 90th percentile around zero, all on one scale. */
final class Bar {
    static final int WIDTH = 21;

    private final Letters letters;
    private final double least;
    private final double most;

    Bar(Letters letters, Collection<Saving> all) {
        this.letters = letters;
        double low = 0;
        double high = 0;
        for (Saving s : all) {
            low = Math.min(low, Math.min(s.p10(), s.mean()));
            high = Math.max(high, Math.max(s.p90(), s.mean()));
        }
        least = low;
        most = high > low ? high : low + 1;
    }

    /** The ends of the scale, one at each side. */
    String scale() {
        String left = least < 0 ? "out " + Figures.size(least) : "0";
        String right = Figures.shows(most) ? "up " + Figures.money(most) : "0";
        return left + " ".repeat(Math.max(1, WIDTH - left.length() - right.length())) + right;
    }

    /** No bar, the zero mark alone. */
    String empty() {
        char[] cells = new char[WIDTH];
        Arrays.fill(cells, ' ');
        cells[cell(0)] = letters.zero;
        return new String(cells);
    }

    String of(Saving saving, boolean faint) {
        char[] cells = empty().toCharArray();
        for (int i = cell(saving.p10()); i <= cell(saving.p90()); i++) {
            cells[i] = i == cell(0) ? letters.zero : faint ? letters.faintRange : letters.range;
        }
        cells[cell(saving.mean())] = faint ? letters.faintMean : letters.mean;
        return new String(cells);
    }

    private int cell(double x) {
        return (int) Math.round((x - least) / (most - least) * (WIDTH - 1));
    }
}
