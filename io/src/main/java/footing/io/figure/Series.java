package footing.io.figure;

import java.util.List;

/** What belongs together in a figure, under one name. */
public record Series(String name, Shape shape, Tone tone, Stroke stroke, List<Point> points) {
    public Series {
        points = List.copyOf(points);
    }
}
