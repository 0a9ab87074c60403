package footing.io.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The format of trial files as JSON Schema, written by the forms the reader checks with.
 *
 * <p>Source: JSON Schema, draft 2020-12.
 */
public final class TrialSchema {
    private TrialSchema() {}

    /** The schema as indented JSON. */
    public static String json() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:" + TrialFile.FORMAT.replace('/', ':'));
        schema.put("title", "A field trial of Footing, format " + TrialFile.FORMAT);
        schema.putAll(new TrialForm().schema());
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build()
                .writeValueAsString(schema);
    }
}
