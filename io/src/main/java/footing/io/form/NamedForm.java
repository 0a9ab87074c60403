package footing.io.form;

import java.util.LinkedHashMap;
import java.util.Map;

/** Alike things, each under an id of the user's choice. */
public record NamedForm(Form item, int least, int most, TextForm id) implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Mapping mapping)) {
            Form.wrongShape(node, at, problems, "one or more ids are due, each with what it stands for", advice());
            return;
        }
        int size = mapping.entries().size();
        if (size < least) {
            problems.error(at, mapping, "nothing stands here", advice());
        } else if (size > most) {
            problems.tooLarge(at, size + " ids", "so many are not read", most);
            return;
        }
        for (Node.Entry entry : mapping.entries()) {
            At here = at.key(entry.key().line(), entry.key().text());
            String fault = id.fault(entry.key().text());
            if (!fault.isEmpty()) {
                problems.error(here, entry.key(), fault, advice());
            }
            item.check(entry.value(), here, problems);
        }
    }

    private String advice() {
        return "try: " + example();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("propertyNames", id.limits());
        schema.put("additionalProperties", item.schema());
        schema.put("minProperties", least);
        schema.put("maxProperties", most);
        return schema;
    }

    @Override
    public String example() {
        return id.example() + ": " + item.example();
    }
}
