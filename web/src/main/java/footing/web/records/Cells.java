package footing.web.records;

import footing.io.records.Sheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Cells of a row by the names of columns, as they are kept and as forms send them. */
final class Cells {
    static final String FIELD = "cell.";
    private static final int LONGEST = 500;
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, String>> TYPE = new TypeReference<>() {};

    private Cells() {}

    /** The same cells always make the same text. */
    static String write(Map<String, String> cells) {
        return JSON.writeValueAsString(new TreeMap<>(cells));
    }

    static Map<String, String> read(String json) {
        return JSON.readValue(json, TYPE);
    }

    /** Those a form sends, of columns that there are, on one line and cut to a bearable length. */
    static Map<String, String> ofForm(Map<String, String> form) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String column : Sheet.columns()) {
            String typed = form.get(FIELD + column);
            if (typed != null) {
                cells.put(column, clean(typed));
            }
        }
        return cells;
    }

    static String clean(String typed) {
        String line = typed.replaceAll("\\p{Cntrl}+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }

    /** A row with other cells; an empty one takes away what stood there. */
    static Map<String, String> with(Map<String, String> row, Map<String, String> changed) {
        Map<String, String> cells = new LinkedHashMap<>(row);
        changed.forEach((column, text) -> {
            if (text.isEmpty()) {
                cells.remove(column);
            } else {
                cells.put(column, text);
            }
        });
        return cells;
    }

    /** What is to stand otherwise than it does. */
    static Map<String, String> changed(Map<String, String> row, Map<String, String> wanted) {
        Map<String, String> changed = new LinkedHashMap<>(wanted);
        changed.entrySet().removeIf(e -> row.getOrDefault(e.getKey(), "").equals(e.getValue()));
        return changed;
    }
}
