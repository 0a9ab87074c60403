package footing.io.records;

import footing.io.form.Node;

/** Why a cell can't be read, and what would mend it; empty advice if that isn't plain. */
final class BadCell extends Exception {
    private static final long serialVersionUID = 1;

    private final Column column;
    private final String read;
    private final String advice;

    BadCell(Column column, String read, String message, String advice) {
        super(message, null, false, false);
        this.column = column;
        this.read = read;
        this.advice = advice;
    }

    static BadCell missing(Column column, String why) {
        return new BadCell(column, "", "nothing stands there, " + why, "");
    }

    String column() {
        return column.header();
    }

    /** What stands there, as it can be shown. */
    String read() {
        return Node.shown(read);
    }

    String advice() {
        return advice;
    }
}
