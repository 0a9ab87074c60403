package footing.io.casefile;

import footing.io.catalog.CatalogFile;
import footing.io.form.Form;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The file formats as JSON Schema, written by the same forms the reader checks with. What takes several values to see,
 * such as a reference or a sum of shares, no schema can say; ranges of quantities written with their unit are left to
 * the reader as well.
 *
 * <p>Source: JSON Schema, draft 2020-12.
 */
public final class CaseSchema {
    static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private CaseSchema() {}

    /** The schema of a case file, as indented JSON. */
    public static String json() {
        return json("A case of Footing", CaseFile.FORMAT, CaseForm.CASE);
    }

    /** The schema of a catalog file, as indented JSON. */
    public static String catalogJson() {
        return json("A catalog of Footing", CatalogFile.FORMAT, CatalogFile.FORM);
    }

    private static String json(String title, String format, Form form) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", DIALECT);
        schema.put("$id", "urn:" + format.replace('/', ':'));
        schema.put("title", title + ", format " + format);
        schema.putAll(form.schema());
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build()
                .writeValueAsString(schema);
    }
}
