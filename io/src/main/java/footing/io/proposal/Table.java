package footing.io.proposal;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as data: printed in the document and written as a file.
 *
 * @param id the name of its file
 */
record Table(String id, String title, List<Column> columns, List<List<Cell>> rows) {
    private static final int NARROW = 26;

    /** A column; numbers stand at its right. */
    record Column(String head, boolean numbers) {}

    Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        id + ": " + row.size() + " cells under " + columns.size() + " heads");
            }
        }
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** True for a column of short cells, none of which should be broken. */
    boolean isNarrow(int column) {
        return rows.stream().allMatch(r -> r.get(column).shown().length() <= NARROW);
    }

    /** Collects rows under heads; a head that starts with {@code #} is one of numbers. */
    static Builder named(String id, String title, String... heads) {
        return new Builder(id, title, heads);
    }

    /** The same table with its first rows alone. */
    Table first(int most) {
        return new Table(id, title, columns, rows.subList(0, Math.min(most, rows.size())));
    }

    /** The same table with a first column that holds one text in every row. */
    Table led(String head, String text) {
        List<Column> wider = new ArrayList<>(columns);
        wider.add(0, new Column(head, false));
        List<List<Cell>> led = new ArrayList<>();
        for (List<Cell> row : rows) {
            List<Cell> cells = new ArrayList<>(row);
            cells.add(0, Cell.text(text));
            led.add(cells);
        }
        return new Table(id, title, wider, led);
    }

    static final class Builder {
        private final String id;
        private final String title;
        private final List<Column> columns = new ArrayList<>();
        private final List<List<Cell>> rows = new ArrayList<>();

        private Builder(String id, String title, String... heads) {
            this.id = id;
            this.title = title;
            for (String head : heads) {
                boolean numbers = head.startsWith("#");
                columns.add(new Column(numbers ? head.substring(1) : head, numbers));
            }
        }

        Builder row(Cell... cells) {
            rows.add(List.of(cells));
            return this;
        }

        Table built() {
            return new Table(id, title, columns, rows);
        }
    }
}
