package footing.io.casefile;

import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.json.JsonMapper;

/** The JSON of a YAML text, by the YAML library's own construction of values, not by ours. */
final class JsonTwin {
    private JsonTwin() {}

    static String of(String yaml) {
        Object tree =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        return new JsonMapper().writeValueAsString(tree instanceof Map<?, ?> map ? map : Map.of());
    }
}
