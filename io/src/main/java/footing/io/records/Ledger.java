package footing.io.records;

import footing.core.records.Log;
import footing.io.form.Problem;
import footing.io.sheet.SafeCell;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows from several places, such as sheets and quick entries, read as one log. Each row knows where it came from, and
 * the whole can be written as one sheet, a line for each row.
 */
public final class Ledger {
    private static final Pattern LINE = Pattern.compile("\\bline ([0-9]+)");
    private static final Pattern HARMLESS = Pattern.compile("[+-]?[\\p{L}\\p{N}. ]*");

    private final List<Row> rows;
    private final String csv;
    private final Records records;

    /**
     * One row.
     *
     * @param source where it came from, in words that fit behind 'line 12 of'
     * @param line there, counted from 1
     * @param cells by the names of {@link Sheet#columns}
     */
    public record Row(String source, int line, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        String place() {
            return "line " + line + " of " + source;
        }
    }

    /**
     * A row that can't be.
     *
     * @param column whose cell can't be read; empty if it is the row as a whole
     * @param reason why, in words
     * @param advice what would mend it; empty if that isn't plain
     * @param mends what can be done without asking more
     */
    public record Refused(Row row, String column, String read, String reason, String advice, List<Mend> mends) {
        public Refused {
            mends = List.copyOf(mends);
        }
    }

    private Ledger(List<Row> rows, String csv, Records records) {
        this.rows = rows;
        this.csv = csv;
        this.records = records;
    }

    public static Ledger of(List<Row> rows) {
        String csv = written(rows);
        byte[] bytes = csv.getBytes(StandardCharsets.UTF_8);
        return new Ledger(List.copyOf(rows), csv, RecordsFile.read("records", bytes, Map.of()));
    }

    /** The rows that can be. */
    public Log log() {
        return records.log();
    }

    public int rows() {
        return rows.size();
    }

    /** The rows that can't be, in the order they came. */
    public List<Refused> refused() {
        List<Refused> refused = new ArrayList<>();
        for (Problem p : records.refused()) {
            Row row = rows.get(p.line() - 2);
            String reason = placed(p.message());
            refused.add(new Refused(row, p.path(), p.read(), reason, placed(p.advice()), Mend.of(p, row.cells())));
        }
        return List.copyOf(refused);
    }

    /** All rows as comma-separated values with a header, line n + 2 the n-th of them. */
    public String csv() {
        return csv;
    }

    /** Lines of the whole as the lines of their own files. */
    private String placed(String text) {
        return LINE.matcher(text).replaceAll(m -> {
            int at = Integer.parseInt(m.group(1)) - 2;
            return Matcher.quoteReplacement(
                    at >= 0 && at < rows.size() ? rows.get(at).place() : m.group());
        });
    }

    private static String written(List<Row> rows) {
        List<String> columns = Sheet.columns();
        StringWriter text = new StringWriter();
        try (var csv = de.siegmar.fastcsv.writer.CsvWriter.builder()
                .lineDelimiter(de.siegmar.fastcsv.writer.LineDelimiter.LF)
                .build(text)) {
            csv.writeRecord(columns);
            for (Row row : rows) {
                csv.writeRecord(columns.stream()
                        .map(c -> cell(row.cells().getOrDefault(c, "")))
                        .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** On one line, so that lines and rows go together; no formula, but a name such as -3 stays what it is. */
    private static String cell(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
        return HARMLESS.matcher(line).matches() ? line : SafeCell.text(line);
    }
}
