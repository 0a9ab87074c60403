package footing.io.records;

import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Nearest;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** A file that says which column of a sheet is which: {@code date: Day worked}, one a line, YAML or JSON. */
final class Mapping {
    private Mapping() {}

    /** @throws IOException if the file can't be read */
    static Map<Column, String> read(Path file, Problems problems) throws IOException {
        Map<Column, String> mapping = new EnumMap<>(Column.class);
        String text = FileText.read(file, problems);
        Node root = text == null ? null : FileText.tree(text, problems);
        if (root instanceof Node.Mapping lines) {
            lines.entries().forEach(line -> put(line, mapping, problems));
        } else if (root != null) {
            problems.error(At.TOP, root, "a list of columns is due", "write a line such as date: Day worked");
        }
        return mapping;
    }

    private static void put(Node.Entry line, Map<Column, String> mapping, Problems problems) {
        String name = line.key().text();
        At at = new At(line.key().line(), name);
        var column = Arrays.stream(Column.values())
                .filter(c -> c.header().equals(name))
                .findFirst();
        if (column.isEmpty()) {
            var known = Arrays.stream(Column.values()).map(Column::header).toList();
            problems.error(at, name, "is no column of records", Nearest.advice(name, known));
        } else if (line.value() instanceof Node.Scalar header) {
            mapping.put(column.get(), header.text());
        } else {
            problems.error(at, line.value(), "the header of a column is due", "");
        }
    }
}
