package footing.io.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** The table behind a figure: the same points, a row for each place. */
public record FigureTable(String caption, List<String> heads, List<Row> rows) {
    /** A row: the place, then a cell for each head but the first. */
    public record Row(String head, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** A column: its head and what it says of a point. */
    private record Column(String head, Series series, BiFunction<Figure, Point, String> cell) {}

    public FigureTable {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    public static FigureTable of(Figure figure) {
        List<Column> columns = new ArrayList<>();
        figure.series().forEach(s -> columns.addAll(columns(figure, s)));
        SortedMap<Double, Integer> places = new TreeMap<>();
        figure.series().forEach(s -> s.points().forEach(p -> places.merge(p.at(), 1, Integer::max)));
        figure.series().forEach(s -> repeats(s).forEach((at, n) -> places.merge(at, n, Integer::max)));
        List<Row> rows = new ArrayList<>();
        places.forEach((at, times) -> {
            for (int i = 0; i < times; i++) {
                rows.add(row(figure, columns, at, i));
            }
        });
        List<String> heads = new ArrayList<>();
        heads.add(figure.places().title());
        columns.forEach(c -> heads.add(c.head()));
        return new FigureTable(figure.title(), heads, rows);
    }

    /** How many points of a series stand at each place: a line may fall at once. */
    private static SortedMap<Double, Integer> repeats(Series series) {
        SortedMap<Double, Integer> times = new TreeMap<>();
        series.points().forEach(p -> times.merge(p.at(), 1, Integer::sum));
        return times;
    }

    private static Row row(Figure figure, List<Column> columns, double at, int i) {
        List<String> cells = new ArrayList<>();
        for (Column c : columns) {
            List<Point> here =
                    c.series().points().stream().filter(p -> p.at() == at).toList();
            cells.add(here.isEmpty() ? "" : c.cell().apply(figure, here.get(Math.min(i, here.size() - 1))));
        }
        return new Row(figure.places().write(at), cells);
    }

    private static List<Column> columns(Figure figure, Series s) {
        if (s.shape() == Shape.BAND) {
            return List.of(
                    new Column("one in ten below", s, (f, p) -> end(f, p, true)),
                    new Column("one in ten above", s, (f, p) -> end(f, p, false)));
        }
        if (s.shape() != Shape.SPAN) {
            return List.of(new Column(s.name(), s, (f, p) -> f.values().write(p.value())));
        }
        if (figure.kind() == Kind.TIMELINE) {
            return List.of(new Column(s.name(), s, (f, p) -> end(f, p, true) + " to " + end(f, p, false)));
        }
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("low end", s, (f, p) -> end(f, p, true)));
        columns.add(new Column(s.name(), s, (f, p) -> f.values().write(p.value())));
        columns.add(new Column("high end", s, (f, p) -> end(f, p, false)));
        return columns;
    }

    private static String end(Figure figure, Point p, boolean from) {
        Point.Span span = p.span();
        if (span == null) {
            return "";
        }
        String note = from ? span.fromNote() : span.toNote();
        String value = figure.values().write(from ? span.from() : span.to());
        return note.isEmpty() ? value : value + " (at " + note + ")";
    }
}
