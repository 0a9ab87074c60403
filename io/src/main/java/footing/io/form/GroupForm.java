package footing.io.form;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Fixed keys, each with its own form. A key that is misspelled is told as that alone, not as missing too. */
public record GroupForm(List<Field> fields, List<Tie> ties) implements Form {
    public GroupForm {
        fields = List.copyOf(fields);
        ties = List.copyOf(ties);
    }

    public static GroupForm of(List<Field> fields) {
        return new GroupForm(fields, List.of());
    }

    public static GroupForm of(Field... fields) {
        return of(List.of(fields));
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Mapping mapping)) {
            Form.wrongShape(node, at, problems, "keys with values are due", "try: " + example());
            return;
        }
        Set<String> present = new LinkedHashSet<>();
        Set<String> meant = new LinkedHashSet<>();
        for (Node.Entry entry : mapping.entries()) {
            String name = entry.key().text();
            At here = at.key(entry.key().line(), name);
            Optional<Field> field = field(name);
            if (field.isPresent()) {
                present.add(name);
                field.get().form().check(entry.value(), here, problems);
            } else {
                problems.unknown(here, name, "no such key", names());
                Nearest.find(name, names()).ifPresent(meant::add);
            }
        }
        for (Field field : fields) {
            boolean stated = present.contains(field.name()) || meant.contains(field.name());
            if (field.required() && !stated) {
                At here = at.key(at.line(), field.name());
                problems.error(
                        here,
                        "",
                        "missing",
                        "try: " + field.name() + ": " + field.form().example());
            }
        }
        ties.forEach(t -> t.check(present, at, problems));
    }

    private Optional<Field> field(String name) {
        return fields.stream().filter(f -> f.name().equals(name)).findFirst();
    }

    private List<String> names() {
        return fields.stream().map(Field::name).toList();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        fields.forEach(f -> properties.put(f.name(), f.form().schema()));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put(
                "required",
                fields.stream().filter(Field::required).map(Field::name).toList());
        schema.put("additionalProperties", false);
        ties.forEach(t -> t.addTo(schema));
        return schema;
    }

    @Override
    public String example() {
        List<Field> shown = fields.stream().filter(Field::required).toList();
        return (shown.isEmpty() ? fields.subList(0, 1) : shown)
                .stream().map(f -> f.name() + ": " + f.form().example()).collect(Collectors.joining(", ", "{", "}"));
    }
}
