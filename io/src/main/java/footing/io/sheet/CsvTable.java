package footing.io.sheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategy;
import footing.io.form.Written;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table as comma-separated values after RFC 4180: lines end in CR LF, quotes within quoted cells are doubled. Cells
 * are added from left to right, {@link #end} ends a row.
 */
public final class CsvTable implements AutoCloseable {
    /** Led by an apostrophe and not quoted, a text would look as if it were the user's own. */
    private static final QuoteStrategy QUOTED_IF_LED = new QuoteStrategy() {
        @Override
        public boolean quoteValue(int line, int field, String value) {
            return value.startsWith("'");
        }
    };

    private final CsvWriter csv;
    private final List<String> cells = new ArrayList<>();

    /** Writes to a writer, which stays open. */
    public CsvTable(Writer to) {
        csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.CRLF)
                .quoteStrategy(QUOTED_IF_LED)
                .build(to);
    }

    /** A text cell; one that a spreadsheet would take for a formula is led by an apostrophe. */
    public CsvTable text(String value) {
        cells.add(SafeCell.text(value));
        return this;
    }

    /** A number with a decimal point, to 12 digits; empty if there is none. */
    public CsvTable number(@Nullable Double value) {
        cells.add(value != null && Math.abs(value) < Double.POSITIVE_INFINITY ? Written.number(value) : "");
        return this;
    }

    /** Ends the row. */
    public void end() {
        csv.writeRecord(cells);
        cells.clear();
    }

    /** Hands all rows on. */
    @Override
    public void close() throws IOException {
        try {
            csv.flush();
        } catch (UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        }
    }
}
