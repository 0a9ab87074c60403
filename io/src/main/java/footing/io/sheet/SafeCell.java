package footing.io.sheet;

/**
 * The one rule for texts that somebody else wrote and that end in a cell: none may become a formula. A text whose first
 * letter after blanks could start one (also in its full-width form) is led by an apostrophe where the format has no
 * other way to say 'text'.
 */
public final class SafeCell {
    private static final String STARTERS = "=+-@|\uFF1D\uFF0B\uFF0D\uFF20";
    private static final String BLANKS_THAT_START = "\t\r\n";

    private SafeCell() {}

    /** True if a spreadsheet could take the text for a formula when it is typed or imported. */
    public static boolean looksLikeFormula(String text) {
        if (text.isEmpty()) {
            return false;
        }
        String begins = text.stripLeading();
        return BLANKS_THAT_START.indexOf(text.charAt(0)) >= 0
                || (!begins.isEmpty() && STARTERS.indexOf(begins.charAt(0)) >= 0);
    }

    /** The text as it may stand in a file that has only text, such as comma-separated values. */
    public static String text(String text) {
        return looksLikeFormula(text) ? "'" + text : text;
    }
}
