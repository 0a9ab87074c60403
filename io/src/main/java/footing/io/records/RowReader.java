package footing.io.records;

import footing.core.records.Entry;
import footing.core.records.Event;
import footing.core.records.Spot;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Reads one row: what each cell says, and what the event needs. */
final class RowReader {
    private static final double MOST_HOURS = 1e6;
    private static final int LONGEST = 500;
    private static final int LONGEST_NUMBER = 100;

    private final Columns columns;

    RowReader(Columns columns) {
        this.columns = columns;
    }

    Entry read(Table.Row row) throws BadCell {
        Event event = event(row);
        Entry entry = new Entry(
                row.line(),
                Days.of(brief(row, Column.DATE)),
                text(row, Column.MACHINE),
                event,
                Measured.plain(Column.HOURS, brief(row, Column.HOURS), MOST_HOURS, "h", "hr", "hrs", "hours"),
                spot(row),
                text(row, Column.ASSEMBLY),
                detail(row, event));
        check(entry);
        return entry;
    }

    private Event event(Table.Row row) throws BadCell {
        String word = columns.cell(row, Column.EVENT);
        if (word.isEmpty()) {
            throw BadCell.missing(Column.EVENT, "every row needs its event");
        }
        return Vocabulary.EVENTS.read(Column.EVENT, word);
    }

    private @Nullable Spot spot(Table.Row row) throws BadCell {
        String word = columns.cell(row, Column.POSITION);
        return word.isEmpty() ? null : Vocabulary.SPOTS.read(Column.POSITION, word);
    }

    private Entry.Detail detail(Table.Row row, Event event) throws BadCell {
        String reason = columns.cell(row, Column.REASON);
        boolean reasoned = event == Event.OFF && !reason.isEmpty();
        Quantity quantity = Quantity.of(event, brief(row, Column.QUANTITY), columns.unit(Column.QUANTITY));
        return new Entry.Detail(
                text(row, Column.CAUSE),
                text(row, Column.FIX),
                reasoned ? Vocabulary.REASONS.read(Column.REASON, reason) : reason,
                text(row, Column.NOTE),
                Measured.minutes(brief(row, Column.MINUTES), columns.unit(Column.MINUTES)),
                Measured.money(brief(row, Column.COST)),
                quantity.number(),
                quantity.about(),
                Measured.depth(brief(row, Column.DEPTH), columns.unit(Column.DEPTH)));
    }

    /** What holds a number or a date is short; a page of text there must not be searched for one. */
    private String brief(Table.Row row, Column column) throws BadCell {
        String text = columns.cell(row, column);
        if (text.length() > LONGEST_NUMBER) {
            throw new BadCell(column, text, "is longer than " + LONGEST_NUMBER + " letters", "");
        }
        return text;
    }

    private String text(Table.Row row, Column column) throws BadCell {
        String text = columns.cell(row, column);
        if (text.length() > LONGEST) {
            throw new BadCell(column, text, "is longer than " + LONGEST + " letters", "");
        }
        return text;
    }

    private static void check(Entry e) throws BadCell {
        if (e.machine().isEmpty() && e.event() != Event.BOUGHT) {
            throw BadCell.missing(Column.MACHINE, "only a purchase may leave it out");
        }
        boolean tire = e.event() == Event.FIT || e.event() == Event.OFF || e.event() == Event.TREAD;
        if (tire && e.spot() == null) {
            throw BadCell.missing(Column.POSITION, "say drive or caster");
        }
        boolean named = e.event() == Event.BOUGHT || (e.event() == Event.FIT && e.spot() != Spot.METER);
        if (named && e.assembly().isEmpty()) {
            throw BadCell.missing(Column.ASSEMBLY, "say which was fitted or bought");
        }
        if (e.event() == Event.TREAD && e.detail().depth().isEmpty()) {
            throw BadCell.missing(Column.DEPTH, "a tread row needs it, such as 9.5 mm or 12/32 in");
        }
        OptionalDouble hours = e.hours();
        if (e.event() == Event.READING && hours.isEmpty()) {
            throw BadCell.missing(Column.HOURS, "a reading needs it");
        }
    }
}
