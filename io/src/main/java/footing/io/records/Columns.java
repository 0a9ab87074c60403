package footing.io.records;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which column of a sheet is which: by the user's mapping first, then by name and synonym. */
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
            Integer twin = columns.at.putIfAbsent(column.get(), i);
            if (twin != null) {
                throw new Table.Unreadable(
                        "'" + header.get(twin).strip() + "' and '" + name + "' both mean "
                                + column.get().header(),
                        "rename one, or say which with --columns");
            }
            columns.units.put(column.get(), Column.unit(name));
        }
        columns.checkComplete(header, mapping);
        return columns;
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
