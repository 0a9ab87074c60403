package footing.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Names beside columns of numbers. A name that does not fit stands on lines of its own above its numbers. */
final class Table {
    private static final int GAP = 2;

    private final List<String> head;
    private final List<Row> rows = new ArrayList<>();

    /** A name and its numbers. */
    private record Row(String name, List<String> numbers) {}

    /** {@code head} names the columns of numbers, lines of a name parted by a bar. */
    Table(String... head) {
        this.head = List.of(head);
    }

    Table row(String name, List<String> numbers) {
        rows.add(new Row(name, numbers));
        return this;
    }

    void print(Lines lines) {
        int[] widths = widths();
        int numbers = 0;
        for (int width : widths) {
            numbers += GAP + width;
        }
        int room = Lines.WIDTH - numbers;
        int longest = rows.stream().mapToInt(r -> r.name().length() + GAP).max().orElse(0);
        int names = Math.min(room, longest);
        printHead(lines, widths, names);
        for (Row row : rows) {
            String name = "  " + row.name();
            if (name.length() > names) {
                lines.item(row.name());
                name = "";
            }
            lines.line(Lines.left(name, names) + numbers(row.numbers(), widths));
        }
    }

    private int[] widths() {
        int[] widths = new int[head.size()];
        for (int i = 0; i < widths.length; i++) {
            for (String word : head.get(i).split("\\|", -1)) {
                widths[i] = Math.max(widths[i], word.length());
            }
            for (Row row : rows) {
                widths[i] = Math.max(widths[i], row.numbers().get(i).length());
            }
        }
        return widths;
    }

    private void printHead(Lines lines, int[] widths, int names) {
        int most = head.stream().mapToInt(h -> h.split("\\|", -1).length).max().orElse(0);
        for (int line = 0; line < most; line++) {
            List<String> words = new ArrayList<>();
            for (String h : head) {
                String[] all = h.split("\\|", -1);
                int word = line - (most - all.length);
                words.add(word < 0 ? "" : all[word]);
            }
            lines.line(" ".repeat(names) + numbers(words, widths));
        }
    }

    private static String numbers(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(" ".repeat(GAP)).append(Lines.right(cells.get(i), widths[i]));
        }
        return line.toString();
    }
}
