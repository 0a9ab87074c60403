package footing.cli.text;

/** The letters and marks a terminal can show. */
public enum Letters {
    UTF8('\u2500', '\u25CF', '\u2502', '\u00B7', '\u25CB'),
    ASCII('=', 'o', '|', '.', 'o');

    final char range;
    final char mean;
    final char zero;
    final char faintRange;
    final char faintMean;

    Letters(char range, char mean, char zero, char faintRange, char faintMean) {
        this.range = range;
        this.mean = mean;
        this.zero = zero;
        this.faintRange = faintRange;
        this.faintMean = faintMean;
    }

    /** A text in these letters; what can't be shown becomes its nearest or a question mark. No control characters. */
    public String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(c -> append(shown, c));
        return shown.toString();
    }

    private void append(StringBuilder shown, int c) {
        if (c == '\n' || (c >= ' ' && c < 127)) {
            shown.append((char) c);
        } else if (c == '\t') {
            shown.append(' ');
        } else if (c < 160 || Character.getType(c) == Character.FORMAT) {
            shown.append('?');
        } else if (this == UTF8) {
            shown.appendCodePoint(c);
        } else {
            shown.append(nearest(c));
        }
    }

    /** One letter for one, so that columns stay. */
    private static char nearest(int c) {
        return switch (c) {
            case '\u2026' -> '.';
            case '\u2013', '\u2014', '\u2212' -> '-';
            case '\u2018', '\u2019' -> '\'';
            case '\u201C', '\u201D' -> '"';
            case '\u00D7' -> 'x';
            case '\u00A0' -> ' ';
            default -> '?';
        };
    }
}
