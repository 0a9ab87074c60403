package footing.web.records;

import footing.io.form.Problem;
import footing.io.records.Sheet;
import footing.io.words.Lists;
import footing.web.cases.Spoken;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet, as the page lists it.
 *
 * @param said how many of its rows are used
 * @param fault why none can be; empty if they can
 * @param more what else is to be said of it
 * @param columns what each column of records is taken from
 * @param headers those of the sheet, to choose from
 */
record SheetLine(
        long id,
        String name,
        String when,
        String said,
        String fault,
        List<String> more,
        List<ColumnChoice> columns,
        List<String> headers) {
    private static final int MOST_HEADERS = 60;

    /** Which header stands for a column; empty if none was chosen by hand. */
    record ColumnChoice(String column, String chosen) {}

    static SheetLine of(Logbook book, Logbook.Part part) {
        Sheet read = part.read();
        long id = part.kept().id();
        long refused = book.refused().stream()
                .filter(r -> book.key(r.row()).sheet() == id)
                .count();
        String said = read.rows().size()
                + (read.rows().size() == 1 ? " row" : " rows")
                + (refused > 0 ? ", " + refused + " of them to mend" : "");
        List<String> more = new ArrayList<>(read.notes());
        if (!read.ignored().isEmpty()) {
            more.add("Columns kept and not read: " + Lists.and(read.ignored()) + ".");
        }
        return new SheetLine(
                id,
                part.label(),
                Spoken.time(part.kept().at()),
                read.faults().isEmpty() ? said : "none of its rows can be used yet",
                read.faults().isEmpty() ? "" : fault(read.faults().get(0)),
                more,
                Sheet.columns().stream()
                        .map(c -> new ColumnChoice(c, part.kept().mapping().getOrDefault(c, "")))
                        .toList(),
                headers(read));
    }

    private static String fault(Problem p) {
        return Lists.capital(p.message()) + "." + (p.advice().isEmpty() ? "" : " " + Lists.capital(advice(p)) + ".");
    }

    /** On the page the mapping is made below, not by an option. */
    private static String advice(Problem p) {
        return p.advice()
                .replace("rename it, or use --columns", "say below which column is which")
                .replace("rename one, or say which with --columns", "say below which of them it is");
    }

    private static List<String> headers(Sheet read) {
        return read.header().stream()
                .map(String::strip)
                .filter(h -> !h.isEmpty())
                .distinct()
                .limit(MOST_HEADERS)
                .toList();
    }
}
