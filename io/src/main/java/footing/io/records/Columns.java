package footing.io.records;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which column of a sheet is which: by the user's mapping first, then by name, then by synonym. */
final class Columns {
    private final Map<Column, Integer> at = new EnumMap<>(Column.class);
    private final Map<Column, String> units = new EnumMap<>(Column.class);
    private final List<String> ignored = new ArrayList<>();

    private Columns() {}

    static Columns of(List<String> header, Map<Column, String> mapping) throws Table.Unreadable {
        Columns columns = new Columns();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip();
            Optional<Column> column = mapped(name, mapping);
            if (column.isEmpty()) {
                column = Column.of(name).filter(c -> !mapping.containsKey(c));
            }
            if (column.isEmpty()) {
                columns.ignore(name);
                continue;
            }
            if (!columns.place(column.get(), i, header)) {
                columns.ignore(name);
                continue;
            }
            columns.units.put(column.get(), Column.unit(name));
        }
        columns.checkComplete(header, mapping);
        return columns;
    }

    /**
     * Gives a column its place; false if another header has it with more right: a column's own name wins over its
     * synonyms, and the loser is named among the ignored.
     */
    private boolean place(Column column, int i, List<String> header) throws Table.Unreadable {
        Integer twin = at.get(column);
        if (twin != null) {
            boolean first = column.isCalled(header.get(twin));
            if (first == column.isCalled(header.get(i))) {
                throw new Table.Unreadable(
                        "'" + header.get(twin).strip() + "' and '"
                                + header.get(i).strip() + "' both mean " + column.header(),
                        "rename one, or say which with --columns");
            }
            if (first) {
                return false;
            }
            ignore(header.get(twin).strip());
        }
        at.put(column, i);
        return true;
    }

    private static Optional<Column> mapped(String name, Map<Column, String> mapping) {
        return mapping.entrySet().stream()
                .filter(e -> Column.plain(e.getValue()).equals(Column.plain(name)))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private void ignore(String name) {
        if (!name.isEmpty()) {
            ignored.add(name);
        }
    }

    private void checkComplete(List<String> header, Map<Column, String> mapping) throws Table.Unreadable {
        for (Column needed : List.of(Column.DATE, Column.EVENT)) {
            if (!at.containsKey(needed)) {
                String wanted = mapping.containsKey(needed) ? " ('" + mapping.get(needed) + "' by the mapping)" : "";
                throw new Table.Unreadable(
                        "no column " + needed.header() + wanted + " in the first row",
                        "the first row has: " + String.join(", ", header) + "; rename it, or use --columns");
            }
        }
    }

    String cell(Table.Row row, Column column) {
        return row.cell(at.getOrDefault(column, -1));
    }

    /** The unit its header names; empty if none. */
    String unit(Column column) {
        return units.getOrDefault(column, "");
    }

    List<String> ignored() {
        return List.copyOf(ignored);
    }
}
