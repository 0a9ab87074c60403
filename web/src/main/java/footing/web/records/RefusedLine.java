package footing.web.records;

import footing.io.records.Ledger;
import footing.io.records.Mend;
import footing.io.records.Sheet;
import footing.io.words.Lists;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A row that can't be, as the page lists it.
 *
 * @param stands what stands in it, in short
 * @param mends what can be accepted with one tap
 * @param boxes its cells, to be mended by hand
 */
record RefusedLine(
        String key, String place, String stands, String why, String advice, List<Proposal> mends, List<Box> boxes) {
    private static final List<String> ALWAYS = List.of("date", "machine", "event", "hours");

    /** One proposed mend: its words and the cells it sets; no cells leave the row out. */
    record Proposal(String words, Map<String, String> cells, boolean leavesOut) {}

    /** A cell to be mended by hand. */
    record Box(String column, String value, boolean faulty) {}

    static RefusedLine of(Logbook book, Ledger.Refused refused) {
        RowKey key = book.key(refused.row());
        Map<String, String> cells = refused.row().cells();
        String read = refused.read().isEmpty() ? "" : " reads ‘" + refused.read() + "’";
        String why = refused.column().isEmpty()
                ? Lists.capital(refused.reason())
                : Lists.capital(refused.column()) + read + ": " + refused.reason();
        return new RefusedLine(
                key.toString(),
                key.isEntry()
                        ? "Written here"
                        : "Line " + key.line() + " of " + refused.row().source(),
                stands(cells),
                why + ".",
                refused.mends().isEmpty() && !refused.advice().isEmpty() ? Lists.capital(refused.advice()) + "." : "",
                refused.mends().stream().map(RefusedLine::proposal).toList(),
                boxes(refused, cells));
    }

    private static Proposal proposal(Mend mend) {
        return new Proposal(mend.words(), mend.cells(), mend.leavesOut());
    }

    private static String stands(Map<String, String> cells) {
        return Sheet.columns().stream()
                .filter(cells::containsKey)
                .map(cells::get)
                .collect(Collectors.joining(" · "));
    }

    /** What every row has, what stands in this one, and the cell that can't be read. */
    private static List<Box> boxes(Ledger.Refused refused, Map<String, String> cells) {
        Set<String> shown = new LinkedHashSet<>(ALWAYS);
        Sheet.columns().stream().filter(cells::containsKey).forEach(shown::add);
        if (!refused.column().isEmpty()) {
            shown.add(refused.column());
        }
        List<Box> boxes = new ArrayList<>();
        shown.forEach(c -> boxes.add(new Box(c, cells.getOrDefault(c, ""), c.equals(refused.column()))));
        return boxes;
    }
}
