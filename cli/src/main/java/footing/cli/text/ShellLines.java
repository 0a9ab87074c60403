package footing.cli.text;

import java.util.ArrayList;
import java.util.List;

/** A command on as many lines as it takes, so that a shell that is given them runs it. */
final class ShellLines {
    private static final int LONGEST_PIECE = 60;
    private static final int LONGEST_WITH_QUOTES = 15;
    private static final int ROOM = Lines.WIDTH - 2;

    private final List<String> lines = new ArrayList<>();
    private String line = "   ";

    private ShellLines() {}

    /** The lines of a command; empty words are left out. */
    static List<String> of(List<String> words) {
        ShellLines shell = new ShellLines();
        words.stream().filter(w -> !w.isEmpty()).forEach(shell::word);
        shell.lines.add(shell.line);
        return shell.lines;
    }

    private void word(String word) {
        int size = word.contains("'") ? LONGEST_WITH_QUOTES : LONGEST_PIECE;
        for (int from = 0; from < word.length(); from += size) {
            String piece = quoted(word.substring(from, Math.min(word.length(), from + size)));
            boolean starts = from == 0;
            String parted = starts ? " " + piece : piece;
            if (line.length() + parted.length() > ROOM) {
                lines.add(line + (starts ? " \\" : "\\"));
                line = starts ? "       " : "";
            }
            line += parted;
        }
    }

    /** Quoted for a shell where it has to be. */
    private static String quoted(String word) {
        return word.matches("[\\w./@%+,:=-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
