package footing.web.answer;

import footing.io.figure.Figure;
import footing.io.figure.FigureJson;
import footing.io.figure.FigureTable;

/** A figure with what the browser draws it from and the table behind it. */
public record FigureView(Figure figure, String json, FigureTable table) {
    public static FigureView of(Figure figure) {
        return new FigureView(figure, FigureJson.write(figure), FigureTable.of(figure));
    }
}
