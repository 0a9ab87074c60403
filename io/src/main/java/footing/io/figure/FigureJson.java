package footing.io.figure;

import tools.jackson.databind.json.JsonMapper;

/** Writes a figure as JSON for whoever draws it: the records' own names, enums in capitals, absent spans as null. */
public final class FigureJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private FigureJson() {}

    public static String write(Figure figure) {
        return MAPPER.writeValueAsString(figure);
    }
}
