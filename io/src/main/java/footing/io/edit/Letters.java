package footing.io.edit;

import footing.io.form.Span;

/** The characters of a text by the code points its spans count. */
final class Letters {
    private final String text;
    private final int[] charAt;

    Letters(String text) {
        this.text = text;
        boolean same = text.codePointCount(0, text.length()) == text.length();
        charAt = new int[same ? 0 : text.codePointCount(0, text.length()) + 1];
        int at = 0;
        for (int i = 0; i < charAt.length; i++) {
            charAt[i] = at;
            at += at < text.length() ? Character.charCount(text.codePointAt(at)) : 0;
        }
    }

    String text() {
        return text;
    }

    int start(Span span) {
        return at(span.start());
    }

    int end(Span span) {
        return at(span.end());
    }

    private int at(int codePoint) {
        return charAt.length == 0 ? codePoint : charAt[Math.min(codePoint, charAt.length - 1)];
    }

    char charAt(int i) {
        return i >= 0 && i < text.length() ? text.charAt(i) : '\n';
    }

    /** Where the line of a place ends, before its line break. */
    int lineEnd(int from) {
        int i = from;
        while (i < text.length() && !isBreak(text.charAt(i))) {
            i++;
        }
        return i;
    }

    /** Where the line before that of a place ends, before its line break. */
    int lineEndBefore(int from) {
        int i = from;
        while (i > 0 && !isBreak(text.charAt(i - 1))) {
            i--;
        }
        i -= i > 0 ? 1 : 0;
        return i > 0 && text.charAt(i) == '\n' && text.charAt(i - 1) == '\r' ? i - 1 : i;
    }

    /** The line break of this text. */
    String lineBreak() {
        int first = lineEnd(0);
        return text.startsWith("\r\n", first) ? "\r\n" : charAt(first) == '\r' ? "\r" : "\n";
    }

    String replaced(int from, int to, String put) {
        return text.substring(0, from) + put + text.substring(to);
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
