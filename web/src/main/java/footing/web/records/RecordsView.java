package footing.web.records;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.io.edit.LearnedEdit;
import footing.io.records.Ledger;
import footing.io.records.Sheet;
import footing.web.cases.Spoken;
import footing.web.store.StoredCase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the page of a case's records shows.
 *
 * @param said how many rows there are and are used
 * @param more rows to mend beyond those listed
 * @param plain rows for which one mend alone is proposed
 * @param learned null if no row can be used yet
 * @param accepts what accepting would replace by what, a sentence each; empty if nothing would change
 * @param uses true if the case has taken in these records as they stand
 */
record RecordsView(
        String said,
        List<SheetLine> sheets,
        List<Laid> archived,
        List<RefusedLine> refused,
        int more,
        int plain,
        List<MendLine> mended,
        List<EntryLine> entries,
        @Nullable LearnedView learned,
        List<String> accepts,
        boolean uses,
        int leavesOut) {
    private static final int MOST_SHOWN = 25;
    private static final int MOST_ENTRIES = 30;

    /** A sheet laid away. */
    record Laid(long id, String name) {}

    /** A row mended or left out. */
    record MendLine(long id, String said) {}

    /** A row written on the page. */
    record EntryLine(long id, String said, String when, boolean undone) {
        static EntryLine of(Kept.Written entry) {
            return new EntryLine(entry.id(), EntryWords.of(entry.cells()), Spoken.time(entry.at()), entry.undone());
        }
    }

    static RecordsView of(StoredCase kept, RecordStore store, Learning learning) {
        Logbook book = learning.book(kept.id());
        List<Ledger.Refused> refused = book.refused();
        boolean any = book.ledger().log().rows() > 0;
        Optional<Learned> learned = any ? Optional.of(learning.learned(kept, book)) : Optional.empty();
        Optional<LearnedEdit.Result> taken = learned.flatMap(l -> taken(kept, l, learning.name(kept.id(), book)));
        boolean uses = taken.filter(t -> t.text().equals(kept.text())).isPresent();
        return new RecordsView(
                said(book),
                book.parts().stream().map(p -> SheetLine.of(book, p)).toList(),
                store.sheets(kept.id()).stream()
                        .filter(Kept.SheetFile::archived)
                        .map(s -> new Laid(s.id(), s.name()))
                        .toList(),
                refused.stream()
                        .limit(MOST_SHOWN)
                        .map(r -> RefusedLine.of(book, r))
                        .toList(),
                Math.max(refused.size() - MOST_SHOWN, 0),
                (int) refused.stream().filter(r -> isPlain(book, r)).count(),
                mended(book, store.mends(kept.id())),
                entries(store.entries(kept.id())),
                learned.map(LearnedView::of).orElse(null),
                taken.filter(t -> !uses).map(LearnedEdit.Result::told).orElse(List.of()),
                uses,
                refused.size());
    }

    static boolean isPlain(Logbook book, Ledger.Refused refused) {
        return refused.mends().size() == 1 && !book.key(refused.row()).isEntry();
    }

    private static String said(Logbook book) {
        int rows = book.ledger().rows();
        if (rows == 0) {
            return "Nothing is written down yet.";
        }
        int used = book.ledger().log().rows();
        return used + " of " + rows + (rows == 1 ? " row" : " rows") + " can be used"
                + (book.refused().isEmpty() ? "" : "; " + book.refused().size() + " to mend")
                + (book.leftOut() == 0 ? "" : "; " + book.leftOut() + " more left out by you")
                + ".";
    }

    private static List<MendLine> mended(Logbook book, List<Kept.Mended> mends) {
        List<MendLine> lines = new ArrayList<>();
        for (Kept.Mended mend : mends) {
            if (!mend.undone()) {
                String what = mend.leavesOut() ? "left out" : cells(mend.cells());
                lines.add(new MendLine(
                        mend.id(), "Line " + mend.line() + " of " + book.label(mend.sheet()) + ": " + what));
            }
        }
        Collections.reverse(lines);
        return lines;
    }

    private static String cells(Map<String, String> cells) {
        return Sheet.columns().stream()
                .filter(cells::containsKey)
                .map(c -> c + " " + (cells.getOrDefault(c, "").isEmpty() ? "taken out" : cells.get(c)))
                .collect(Collectors.joining(", "));
    }

    private static List<EntryLine> entries(List<Kept.Written> entries) {
        List<Kept.Written> latest = new ArrayList<>(entries);
        Collections.reverse(latest);
        return latest.stream().limit(MOST_ENTRIES).map(EntryLine::of).toList();
    }

    /** Nothing if the case can't be read. */
    private static Optional<LearnedEdit.Result> taken(StoredCase kept, Learned learned, String name) {
        Optional<Case> stated = kept.read().found();
        return stated.flatMap(c -> LearnedEdit.write(kept.text(), c, learned, name));
    }
}
