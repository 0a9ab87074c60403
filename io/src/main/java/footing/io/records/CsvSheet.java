package footing.io.records;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Comma-, semicolon- or tab-separated values, whichever the first line has most of; UTF-8, or else what spreadsheets in
 * the west used to write (windows-1252).
 */
final class CsvSheet {
    private static final Charset OLD = Charset.forName("windows-1252");

    private CsvSheet() {}

    static Table read(byte[] bytes) throws Table.Unreadable {
        String text = decode(bytes);
        List<Table.Row> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator(text))
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                Table.Row row = new Table.Row((int) record.getStartingLineNumber(), record.getFields());
                if (!row.isEmpty()) {
                    rows.add(row);
                }
            }
        } catch (CsvParseException | UncheckedIOException | IOException e) {
            throw new Table.Unreadable(
                    "not comma-separated values: " + e.getMessage(), "look for a quote that is never closed");
        }
        return new Table(rows, notes);
    }

    private static String decode(byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, OLD);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static char separator(String text) {
        int end = text.indexOf('\n');
        String first = end < 0 ? text : text.substring(0, end);
        char best = ',';
        for (char c : new char[] {';', '\t'}) {
            best = count(first, c) > count(first, best) ? c : best;
        }
        return best;
    }

    private static long count(String text, char c) {
        return text.chars().filter(x -> x == c).count();
    }
}
