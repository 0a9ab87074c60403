package footing.io.form;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The lines of a YAML text whose values are marked as guesses: by a comment behind them with the word 'guess', or by
 * comment lines right above that hold it and end with a colon. A comment that begins with 'yours' marks none.
 */
public final class GuessMarks {
    private static final Pattern GUESS = Pattern.compile("\\bguess(ed|es)?\\b");
    private static final Pattern LINE_ENDS = Pattern.compile("(?<=\\n)|(?<=\\r)(?!\\n)");
    private static final String YOURS = "yours";
    private static final String NOW = " yours now; was: ";

    private GuessMarks() {}

    /** Line numbers, counted from 1. */
    static BitSet lines(String text) {
        BitSet marked = new BitSet();
        StringBuilder above = new StringBuilder();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            int hash = comment(line);
            if (hash >= 0 && line.substring(0, hash).isBlank()) {
                String words = line.substring(hash + 1).strip();
                if (isSwitchedOff(line.substring(hash + 1))) {
                    above.setLength(0);
                    continue;
                }
                above.append(above.isEmpty() ? "" : " ").append(words);
                continue;
            }
            String before = above.toString();
            above.setLength(0);
            boolean behind = hash >= 0 && isGuess(line.substring(hash + 1));
            if (!line.isBlank() && (behind || (before.endsWith(":") && isGuess(before)))) {
                marked.set(number);
            }
        }
        return marked;
    }

    /** A line with a value, made a comment: no space behind the sharp. */
    private static boolean isSwitchedOff(String comment) {
        return !comment.isEmpty() && !Character.isWhitespace(comment.charAt(0));
    }

    /** The text where what stands on a line is marked as a guess no more; what the comment said stays. */
    public static String unmarked(String text, int line) {
        if (!lines(text).get(line)) {
            return text;
        }
        List<String> lines = split(text);
        int at = line - 1;
        int hash = comment(lines.get(at));
        if (hash < 0 || !isGuess(lines.get(at).substring(hash + 1))) {
            while (at > 0 && isRemark(lines.get(at - 1))) {
                at--;
            }
            hash = comment(lines.get(at));
        }
        String old = lines.get(at);
        lines.set(at, old.substring(0, hash + 1) + NOW + old.substring(hash + 1).stripLeading());
        return String.join("", lines);
    }

    private static boolean isRemark(String line) {
        int hash = comment(line);
        return hash >= 0
                && line.substring(0, hash).isBlank()
                && !isSwitchedOff(line.substring(hash + 1).stripTrailing());
    }

    /** The text with a switched-off line of a group switched on, if there is one. */
    public static String switchedOn(String text, Node.Mapping group, String name) {
        List<String> lines = split(text);
        int first = group.entries().isEmpty()
                ? group.line()
                : group.entries().get(0).key().line();
        int column = group.span().column();
        String wanted = " ".repeat(column) + "#" + name + ":";
        for (int step : new int[] {1, -1}) {
            for (int i = first - 1;
                    i >= 0 && i < lines.size() && (i == first - 1 || within(lines.get(i), column));
                    i += step) {
                if (lines.get(i).startsWith(wanted)) {
                    lines.set(i, " ".repeat(column) + lines.get(i).substring(column + 1));
                    return String.join("", lines);
                }
            }
        }
        return text;
    }

    private static boolean within(String line, int column) {
        int indent = line.length() - line.stripLeading().length();
        return line.isBlank() || indent >= column;
    }

    /** Lines with what ends them. */
    private static List<String> split(String text) {
        return LINE_ENDS.splitAsStream(text).collect(Collectors.toCollection(ArrayList::new));
    }

    private static boolean isGuess(String comment) {
        String words = comment.strip().toLowerCase(Locale.ROOT);
        return !words.startsWith(YOURS) && GUESS.matcher(words).find();
    }

    /** Where the comment of a line begins; −1 if it has none. A sharp within quotes or a word begins none. */
    public static int comment(String line) {
        char quote = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean apart = i == 0 || " \t{[,:".indexOf(line.charAt(i - 1)) >= 0;
            if (quote == '"' && c == '\\') {
                i++;
            } else if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if ((c == '"' || c == '\'') && apart) {
                quote = c;
            } else if (c == '#' && (i == 0 || Character.isWhitespace(line.charAt(i - 1)))) {
                return i;
            }
        }
        return -1;
    }
}
