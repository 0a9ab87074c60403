package footing.io.edit;

import footing.io.form.Node;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One step down the tree of a case file. */
sealed interface Step {
    /** To what stands at a key. */
    record Name(String name) implements Step {}

    /** To an item of a list, counted from 0. */
    record Index(int index) implements Step {}

    /** To the item of a list that has this id. */
    record Id(String id) implements Step {}

    /** Which entry or item of a node this step leads to; below 0 if there is none. */
    default int in(Node node) {
        if (node instanceof Node.Mapping mapping && this instanceof Name name) {
            List<Node.Entry> entries = mapping.entries();
            for (int i = 0; i < entries.size(); i++) {
                if (entries.get(i).key().text().equals(name.name())) {
                    return i;
                }
            }
        } else if (node instanceof Node.Sequence list && this instanceof Id id) {
            for (int i = 0; i < list.items().size(); i++) {
                if (id.id().equals(idOf(list.items().get(i)))) {
                    return i;
                }
            }
        } else if (node instanceof Node.Sequence list && this instanceof Index at) {
            return at.index() < list.items().size() ? at.index() : -1;
        }
        return -1;
    }

    /** The id an item of a list states; null if it states none. */
    static @Nullable String idOf(Node item) {
        if (item instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries()) {
                if (entry.key().text().equals("id") && entry.value() instanceof Node.Scalar id && !id.isNothing()) {
                    return id.text();
                }
            }
        }
        return null;
    }

    /** The i-th value of a collection. */
    static Node child(Node node, int i) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().get(i).value();
        }
        if (node instanceof Node.Sequence list) {
            return list.items().get(i);
        }
        throw new IllegalArgumentException("no collection: " + node.shown());
    }

    static int size(Node node) {
        return node instanceof Node.Mapping m
                ? m.entries().size()
                : node instanceof Node.Sequence s ? s.items().size() : 0;
    }
}
