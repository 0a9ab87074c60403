package footing.io.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A list of alike things. */
public record ListForm(Form item, int least, int most, boolean distinct) implements Form {
    /** A list that isn't empty. */
    public static ListForm of(Form item, int most) {
        return new ListForm(item, 1, most, false);
    }

    /** A list that isn't empty and names nothing twice. */
    public static ListForm distinct(Form item, int most) {
        return new ListForm(item, 1, most, true);
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Sequence sequence)) {
            Form.wrongShape(node, at, problems, "a list is due", "try: " + example());
            return;
        }
        int size = sequence.items().size();
        if (size < least) {
            problems.error(at, sequence, "an empty list says nothing", "try: " + example());
        } else if (size > most) {
            problems.tooLarge(at, size + " items", "a list this long is not read", most);
            return;
        }
        for (int i = 0; i < size; i++) {
            item.check(sequence.items().get(i), itemAt(sequence, i, at), problems);
        }
        if (distinct) {
            checkDistinct(sequence, at, problems);
        }
    }

    private static void checkDistinct(Node.Sequence sequence, At at, Problems problems) {
        List<String> texts = sequence.items().stream().map(Node::text).toList();
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < texts.size(); i++) {
            Integer first = seen.putIfAbsent(texts.get(i), i);
            if (first != null && sequence.items().get(i) instanceof Node.Scalar s) {
                problems.error(at.item(s.line(), i), s, "stands twice in the list", "keep it once");
            }
        }
    }

    /** The place of an item: by its id if it has one, else by its index. */
    static At itemAt(Node.Sequence sequence, int index, At at) {
        Node item = sequence.items().get(index);
        if (item instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries()) {
                if (entry.key().text().equals("id") && entry.value() instanceof Node.Scalar id && !id.isNothing()) {
                    return at.key(item.line(), id.text());
                }
            }
        }
        return at.item(item.line(), index);
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", item.schema());
        schema.put("minItems", least);
        schema.put("maxItems", most);
        if (distinct) {
            schema.put("uniqueItems", true);
        }
        return schema;
    }

    @Override
    public String example() {
        return "[" + item.example() + "]";
    }
}
