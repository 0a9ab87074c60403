package footing.io.records;

import java.util.List;

/**
 * A sheet as texts: dates in ISO, numbers with a point.
 *
 * @param rows all that aren't empty, the header first
 * @param notes what was left out of the file, such as further sheets
 */
record Table(List<Row> rows, List<String> notes) {
    Table {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** @param line counted from 1, as a spreadsheet or an editor counts it */
    record Row(int line, List<String> cells) {
        Row {
            cells = List.copyOf(cells);
        }

        String cell(int column) {
            return column >= 0 && column < cells.size() ? cells.get(column).strip() : "";
        }

        boolean isEmpty() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** A file that isn't a table: why not, and what to do. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1;

        final String advice;

        Unreadable(String message, String advice) {
            super(message);
            this.advice = advice;
        }
    }
}
