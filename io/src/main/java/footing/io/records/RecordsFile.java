package footing.io.records;

import footing.core.records.Entry;
import footing.core.records.Log;
import footing.io.form.Problem;
import footing.io.form.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads records: CSV or XLSX with a header row, its columns in any order. Every row that isn't empty is either in the
 * log or among the refused with line, reason and, where plain, what would mend it.
 */
public final class RecordsFile {
    static final int MOST_BYTES = 64_000_000;
    static final int MOST_ROWS = 1_000_000;

    private RecordsFile() {}

    /**
     * Reads a file.
     *
     * @param columns a file that says which column is which, or null
     * @throws IOException if a file can't be opened or read
     */
    public static Records read(Path file, @Nullable Path columns) throws IOException {
        String name = name(file);
        Map<Column, String> mapping = Map.of();
        if (columns != null) {
            Problems problems = new Problems(name(columns));
            mapping = Mapping.read(columns, problems);
            if (problems.hasErrors()) {
                return Records.unread(name, problems.errors());
            }
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        return read(name, bytes, mapping);
    }

    static Records read(String name, byte[] bytes, Map<Column, String> mapping) {
        try {
            return read(name, table(bytes), mapping);
        } catch (Table.Unreadable e) {
            return Records.unread(
                    name, List.of(new Problem(name, 1, "", "", String.valueOf(e.getMessage()), e.advice)));
        }
    }

    static Table table(byte[] bytes) throws Table.Unreadable {
        if (bytes.length > MOST_BYTES) {
            throw new Table.Unreadable("longer than " + MOST_BYTES / 1_000_000 + " MB", "split it by season");
        }
        boolean zipped = bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K';
        Table table = zipped ? XlsxSheet.read(bytes) : CsvSheet.read(bytes);
        if (table.rows().isEmpty()) {
            throw new Table.Unreadable("the file is empty", "its first row names the columns: date, machine, event, …");
        }
        if (table.rows().size() > MOST_ROWS) {
            throw tooManyRows();
        }
        return table;
    }

    static Table.Unreadable tooManyRows() {
        return new Table.Unreadable("more than " + MOST_ROWS + " rows", "split it by season");
    }

    private static Records read(String name, Table table, Map<Column, String> mapping) throws Table.Unreadable {
        Columns columns = Columns.of(table.rows().get(0).cells(), mapping);
        RowReader reader = new RowReader(columns);
        List<Entry> entries = new ArrayList<>();
        List<Problem> refused = new ArrayList<>();
        for (Table.Row row : table.rows().subList(1, table.rows().size())) {
            try {
                entries.add(reader.read(row));
            } catch (BadCell e) {
                refused.add(new Problem(
                        name, row.line(), e.column(), e.read(), String.valueOf(e.getMessage()), e.advice()));
            }
        }
        Log log = Log.of(entries);
        log.troubles().forEach(t -> refused.add(new Problem(name, t.line(), "", "", t.reason(), t.mend())));
        refused.sort(Comparator.comparingInt(Problem::line));
        return new Records(name, log, refused, table.rows().size() - 1, columns.ignored(), table.notes(), List.of());
    }

    static String name(Path file) {
        Path name = file.getFileName();
        return (name == null ? file : name).toString();
    }
}
