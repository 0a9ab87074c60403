package footing.io.trial;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import footing.core.trial.TrialKind;
import footing.io.form.At;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with one row a run, as the tree of a trial file. The heading names the keys of a run, with a unit in brackets
 * where the cells are bare numbers; which kind it is follows from what is measured, the names of the two things are
 * those in the column 'side', the first to appear being A.
 */
final class SheetRows {
    private static final Pattern HEADING = Pattern.compile("([^(\\[]{1,40})[(\\[]([^)\\]]{1,20})[)\\]]");
    private static final Pattern BARE = Pattern.compile("[-+]?\\d+(?:\\.\\d+)?");
    private static final Pattern ORDER = Pattern.compile(" *\\d{1,6} *");
    private static final int MOST_COLUMNS = 60;

    private final Problems problems;

    SheetRows(Problems problems) {
        this.problems = problems;
    }

    /** A column's key and the unit of its bare numbers. */
    private record Column(String key, String unit) {
        static Column of(String heading) {
            Matcher m = HEADING.matcher(heading.strip());
            return m.matches() ? new Column(m.group(1).strip(), m.group(2).strip()) : new Column(heading.strip(), "");
        }
    }

    /** The tree; null if it is no sheet, with its problem reported. */
    @Nullable
    Node read(String text, String title) {
        List<CsvRecord> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator(text))
                .commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            for (CsvRecord row : csv) {
                if (rows.size() > TrialForm.MOST_RUNS) {
                    problems.error(
                            At.TOP, "", "more than " + TrialForm.MOST_RUNS + " runs are not read", "split the sheet");
                    return null;
                }
                rows.add(row);
            }
        } catch (CsvParseException | java.io.IOException e) {
            problems.error(At.TOP, "", "not a sheet that can be read", "save it as comma-separated values");
            return null;
        }
        return rows.isEmpty() ? empty() : tree(rows, title);
    }

    private @Nullable Node empty() {
        problems.error(At.TOP, "", "the sheet is empty", "start from 'footing trial plan'");
        return null;
    }

    static char separator(String text) {
        String heading =
                text.lines().filter(line -> !line.startsWith("#")).findFirst().orElse("");
        char best = ',';
        for (char c : new char[] {';', '\t'}) {
            if (count(heading, c) > count(heading, best)) {
                best = c;
            }
        }
        return best;
    }

    private static long count(String text, char c) {
        return text.chars().filter(x -> x == c).count();
    }

    private @Nullable Node tree(List<CsvRecord> rows, String title) {
        List<Column> columns = rows.get(0).getFields().stream()
                .limit(MOST_COLUMNS)
                .map(Column::of)
                .toList();
        Optional<TrialKind> kind = kind(columns);
        if (kind.isEmpty()) {
            String known = "side, and what a run gives, such as steady (lbf) or torn (%)";
            problems.error(
                    At.TOP,
                    String.join(", ", rows.get(0).getFields()),
                    "no column says what was measured",
                    "a heading has " + known);
            return null;
        }
        Set<String> sides = new LinkedHashSet<>();
        List<Node> runs = new ArrayList<>();
        for (CsvRecord row : inOrder(rows.subList(1, rows.size()), columns)) {
            runs.add(run(row, columns, sides));
        }
        return file(title, kind.get(), List.copyOf(sides), runs);
    }

    private static Optional<TrialKind> kind(List<Column> columns) {
        for (Measure measure : Measure.values()) {
            if (columns.stream().anyMatch(c -> c.key().equals(measure.key()))) {
                return Optional.of(measure.kind());
            }
        }
        boolean bouts = columns.stream().anyMatch(c -> c.key().equals("winner"));
        return bouts ? Optional.of(TrialKind.PULL) : Optional.empty();
    }

    /** Rows in the order in which the runs were made, where every row says it. */
    private static List<CsvRecord> inOrder(List<CsvRecord> rows, List<Column> columns) {
        int at = columns.stream().map(Column::key).toList().indexOf("order");
        boolean told = at >= 0
                && rows.stream()
                        .allMatch(r -> r.getFieldCount() > at
                                && ORDER.matcher(r.getField(at)).matches());
        return told
                ? rows.stream()
                        .sorted(Comparator.comparingInt(
                                r -> Integer.parseInt(r.getField(at).strip())))
                        .toList()
                : rows;
    }

    private Node run(CsvRecord row, List<Column> columns, Set<String> sides) {
        int line = (int) Math.min(Integer.MAX_VALUE, row.getStartingLineNumber());
        List<Node.Entry> entries = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (int i = 0; i < Math.min(columns.size(), row.getFieldCount()); i++) {
            Column column = columns.get(i);
            String cell = row.getField(i).strip();
            boolean ours = column.key().equals("order") || column.key().equals("pair");
            if (cell.isEmpty() || ours || column.key().isEmpty() || !seen.add(column.key())) {
                continue;
            }
            boolean side = column.key().equals("side") || column.key().equals("winner");
            String value = side ? side(cell, line, sides) : withUnit(cell, column);
            entries.add(new Node.Entry(scalar(line, column.key()), scalar(line, value)));
        }
        return new Node.Mapping(line, entries);
    }

    private static String withUnit(String cell, Column column) {
        return !column.unit().isEmpty() && BARE.matcher(cell).matches() ? cell + " " + column.unit() : cell;
    }

    private String side(String name, int line, Set<String> sides) {
        if (name.equals("even")) {
            return name;
        }
        if (sides.size() == 2 && !sides.contains(name)) {
            problems.unknown(new At(line, "side"), name, "two things are compared, this is a third", sides);
            return "a";
        }
        sides.add(name);
        return name.equals(sides.iterator().next()) ? "a" : "b";
    }

    private static Node file(String title, TrialKind kind, List<String> sides, List<Node> runs) {
        List<Node.Entry> entries = new ArrayList<>();
        entries.add(entry("format", scalar(1, TrialForm.FORMAT)));
        entries.add(entry("kind", scalar(1, TrialForm.word(kind))));
        entries.add(entry("title", scalar(1, title)));
        entries.add(entry("a", contender(!sides.isEmpty() ? sides.get(0) : "A")));
        entries.add(entry("b", contender(sides.size() > 1 ? sides.get(1) : "B")));
        entries.add(entry("runs", new Node.Sequence(footing.io.form.Span.onLine(1), runs)));
        return new Node.Mapping(1, entries);
    }

    private static Node contender(String name) {
        return new Node.Mapping(1, List.of(entry("name", scalar(1, name))));
    }

    private static Node.Entry entry(String key, Node value) {
        return new Node.Entry(scalar(1, key), value);
    }

    /** Quoted, so that a name such as 'null' stays a name. */
    private static Node.Scalar scalar(int line, String text) {
        return new Node.Scalar(line, text, false);
    }
}
