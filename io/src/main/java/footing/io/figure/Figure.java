package footing.io.figure;

import java.util.List;

/**
 * A chart as data.
 *
 * @param id fit for the id of an element
 * @param caption what it shows and how to read it
 * @param places where points stand
 * @param values what they amount to
 * @param marks values worth a line of their own, such as no difference
 */
public record Figure(
        String id,
        String title,
        String caption,
        Kind kind,
        Axis places,
        Axis values,
        List<Series> series,
        List<Mark> marks) {
    /** A line across the figure at a value. */
    public record Mark(double value, String label) {}

    public Figure {
        series = List.copyOf(series);
        marks = List.copyOf(marks);
        if (!id.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("not the id of a figure: " + id);
        }
        for (Series s : series) {
            for (Point p : s.points()) {
                if (places.unit() == Unit.NAME
                        && !(p.at() >= 0 && p.at() < places.names().size())) {
                    throw new IllegalArgumentException(id + ": no name for place " + p.at());
                }
            }
        }
    }
}
