package footing.io.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Pieces of JSON Schema the forms share. */
final class Schemas {
    private Schemas() {}

    static Map<String, Object> pattern(String regex) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^" + regex + "$");
        return schema;
    }

    /** The number of a text; without a minus sign where nothing negative fits. */
    static String number(double least) {
        return least < 0 ? Literal.NUMBER : Literal.NUMBER.replaceFirst("\\[-\\+]", "\\\\+");
    }

    static Map<String, Object> quantity(Quantity quantity, double least) {
        String units = quantity.units().stream().map(Quantity.Unit::name).collect(Collectors.joining("|"));
        return pattern(number(least) + "[ \\t]*(?:" + units + ")");
    }

    static Map<String, Object> words(List<String> words) {
        return Map.of("enum", words);
    }
}
