package footing.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Lines of at most {@value #WIDTH} columns. */
final class Lines {
    static final int WIDTH = 80;

    private final StringBuilder text = new StringBuilder();
    private final Letters letters;

    Lines(Letters letters) {
        this.letters = letters;
    }

    Letters letters() {
        return letters;
    }

    /** A line that is known to fit. */
    Lines line(String line) {
        text.append(letters.shown(line).stripTrailing()).append('\n');
        return this;
    }

    Lines blank() {
        return line("");
    }

    /** A headed part of the page. */
    Lines head(String title) {
        return blank().paragraph(title);
    }

    Lines paragraph(String words) {
        return hanging("", words);
    }

    Lines item(String words) {
        return hanging("  ", words);
    }

    /** Words beside a label, further lines below the words. */
    Lines hanging(String label, String words) {
        if (label.length() > WIDTH / 3) {
            hanging("", label);
            return hanging("  ", words);
        }
        String indent = " ".repeat(label.length());
        String lead = label;
        for (String line : wrap(words, WIDTH - label.length())) {
            line(lead + line);
            lead = indent;
        }
        return this;
    }

    /** Breaks words over lines; a word too long for one is cut. At least one line. */
    static List<String> wrap(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split("\\s+", -1)) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
