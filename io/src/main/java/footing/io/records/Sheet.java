package footing.io.records;

import footing.io.form.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * One sheet laid out but not yet believed: each cell under the name of the column it belongs to, its unit from the
 * header put behind a bare number.
 *
 * @param header its first row as it stands; empty if the file is no table
 * @param rows those that aren't empty; none if there is a fault
 * @param ignored headers of columns nobody reads
 * @param notes what else was left out
 * @param faults why there are no rows; empty if there can be
 */
public record Sheet(
        String file,
        List<String> header,
        List<Row> rows,
        List<String> ignored,
        List<String> notes,
        List<Problem> faults) {
    private static final int LONGEST = 100;
    private static final Pattern BARE = Pattern.compile("[0-9]+(\\.[0-9]*)?|\\.[0-9]+");

    public Sheet {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
        ignored = List.copyOf(ignored);
        notes = List.copyOf(notes);
        faults = List.copyOf(faults);
    }

    /**
     * One row.
     *
     * @param line in its file, counted from 1
     * @param cells by the names of {@link #columns}; those with nothing in them are left out
     */
    public record Row(int line, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }
    }

    /** The names of all columns of records. */
    public static List<String> columns() {
        return Arrays.stream(Column.values()).map(Column::header).toList();
    }

    /**
     * Lays a sheet out, CSV or XLSX.
     *
     * @param mapping headers of the sheet by the names of the columns they stand for; names nobody knows are ignored
     */
    public static Sheet read(String file, byte[] bytes, Map<String, String> mapping) {
        List<String> header = List.of();
        try {
            Table table = RecordsFile.table(bytes);
            header = table.rows().get(0).cells();
            Columns columns = Columns.of(header, known(mapping));
            List<Row> rows = new ArrayList<>();
            for (Table.Row row : table.rows().subList(1, table.rows().size())) {
                rows.add(new Row(row.line(), cells(columns, row)));
            }
            return new Sheet(file, header, rows, columns.ignored(), table.notes(), List.of());
        } catch (Table.Unreadable e) {
            Problem fault = new Problem(file, 1, "", "", String.valueOf(e.getMessage()), e.advice);
            return new Sheet(file, header, List.of(), List.of(), List.of(), List.of(fault));
        }
    }

    private static Map<Column, String> known(Map<String, String> mapping) {
        Map<Column, String> known = new EnumMap<>(Column.class);
        for (Column column : Column.values()) {
            String header = mapping.get(column.header());
            if (header != null && !header.isBlank()) {
                known.put(column, header);
            }
        }
        return known;
    }

    private static Map<String, String> cells(Columns columns, Table.Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : Column.values()) {
            String text = columns.cell(row, column);
            if (!text.isEmpty()) {
                cells.put(column.header(), BARE.matcher(text).matches() ? text + unit(columns, column) : text);
            }
        }
        if (cells.isEmpty()) {
            // Nobody reads its columns; it must still be refused and not vanish.
            cells.put(
                    Column.NOTE.header(),
                    shortened(String.join(" ", row.cells()).strip()));
        }
        return cells;
    }

    private static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }

    /** Only where reading a row heeds the unit of the header. */
    private static String unit(Columns columns, Column column) {
        return switch (column) {
            case DEPTH, MINUTES, QUANTITY -> {
                String unit = columns.unit(column).toLowerCase(Locale.ROOT);
                yield unit.isEmpty() ? "" : " " + unit;
            }
            default -> "";
        };
    }
}
