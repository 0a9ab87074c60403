package footing.io.interview;

import java.util.regex.Pattern;

/** The lines of a case file: keys with their values, and behind them a comment; what doesn't fit there goes above. */
final class CaseLines {
    private static final int WIDTH = 120;
    private static final int REMARKS_FROM = 32;
    private static final Pattern PLAIN =
            Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ,.'()/-]* [A-Za-z0-9 ,.'()/-]*[A-Za-z0-9.)]");

    private final StringBuilder text = new StringBuilder();
    private final boolean remarks;

    CaseLines() {
        this(true);
    }

    private CaseLines(boolean remarks) {
        this.remarks = remarks;
    }

    /** Lines that keep what is in force and nothing else. */
    static CaseLines withoutRemarks() {
        return new CaseLines(false);
    }

    void add(CaseLines others) {
        text.append(others.text);
    }

    void blank() {
        text.append('\n');
    }

    /** Comment lines, wrapped. */
    void comment(int indent, String words) {
        if (!remarks) {
            return;
        }
        String start = " ".repeat(indent) + "#";
        StringBuilder line = new StringBuilder(start);
        for (String word : words.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH && line.length() > start.length()) {
                text.append(line).append('\n');
                line = new StringBuilder(start);
            }
            line.append(' ').append(word);
        }
        text.append(line).append('\n');
    }

    void line(int indent, String keyAndValue) {
        text.append(" ".repeat(indent)).append(keyAndValue).append('\n');
    }

    void line(int indent, String keyAndValue, String remark) {
        if (!remarks) {
            line(indent, keyAndValue);
            return;
        }
        String body = " ".repeat(indent) + keyAndValue;
        String padded = body.length() < REMARKS_FROM ? body + " ".repeat(REMARKS_FROM - body.length()) : body + "  ";
        if (padded.length() + 2 + remark.length() <= WIDTH) {
            text.append(padded).append("# ").append(remark).append('\n');
        } else {
            comment(indent, remark + ":");
            text.append(body).append('\n');
        }
    }

    /** A line that is switched off: reading takes the same value by itself. */
    void off(int indent, String keyAndValue, String remark) {
        if (remarks) {
            line(indent, "#" + keyAndValue, remark);
        }
    }

    /** A line in force if the value is stated, else switched off. */
    void line(boolean stated, int indent, String keyAndValue, String remark) {
        if (stated) {
            line(indent, keyAndValue, remark);
        } else {
            off(indent, keyAndValue, remark);
        }
    }

    /** A text as YAML can hold it: as it is if nobody could take it for anything else, otherwise quoted. */
    static String quoted(String text) {
        if (PLAIN.matcher(text).matches()) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> append(quoted, c));
        return quoted.append('"').toString();
    }

    private static void append(StringBuilder quoted, int c) {
        boolean special = Character.isISOControl(c)
                || Character.getType(c) == Character.FORMAT
                || Character.getType(c) == Character.LINE_SEPARATOR
                || Character.getType(c) == Character.PARAGRAPH_SEPARATOR
                || c == 0xFFFE
                || c == 0xFFFF;
        if (c == '"' || c == '\\') {
            quoted.append('\\').appendCodePoint(c);
        } else if (special) {
            quoted.append(String.format(java.util.Locale.ROOT, "\\U%08X", c));
        } else {
            quoted.appendCodePoint(c);
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
