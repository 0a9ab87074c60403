package footing.io.form;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Puts what the parser complains of into words. */
final class SyntaxTrouble {
    private SyntaxTrouble() {}

    static At at(RuntimeException e, String text) {
        if (e instanceof MarkedYamlEngineException marked) {
            Mark none = new Mark("", 0, 0, 0, new int[0], 0);
            int line = marked.getProblemMark()
                    .or(marked::getContextMark)
                    .orElse(none)
                    .getLine();
            return new At(line + 1, "");
        }
        if (e instanceof ReaderException reader) {
            int end = Math.max(0, Math.min(reader.getPosition(), text.length()));
            long breaks = text.substring(0, end).chars().filter(c -> c == '\n').count();
            return new At((int) breaks + 1, "");
        }
        return At.TOP;
    }

    static String message(RuntimeException e) {
        if (e instanceof MarkedYamlEngineException marked) {
            String context = marked.getContext() == null ? "" : marked.getContext() + ": ";
            return "not readable as YAML or JSON: " + Node.shown(context)
                    + Node.shown(firstSentence(marked.getProblem()));
        }
        if (e instanceof ReaderException reader) {
            return "holds a character that no text has (code " + reader.getCodePoint() + ")";
        }
        return "not readable as YAML or JSON";
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". (");
        return end < 0 ? text : text.substring(0, end);
    }

    static String advice(RuntimeException e) {
        if (e instanceof MarkedYamlEngineException marked && marked.getProblem().contains("TAB")) {
            return "indent with spaces instead of tabs";
        }
        if (e instanceof ReaderException) {
            return "save the file as plain UTF-8 text";
        }
        return "check the indentation, the brackets and the quotes here and just above";
    }
}
