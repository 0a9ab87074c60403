package footing.io.edit;

import footing.io.form.Node;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The tree a change should lead to, made without the text: what the changed text says must be the same. */
final class Tree {
    private Tree() {}

    /** The tree with a value put in or, if it is null, taken out together with what that leaves empty. */
    static @Nullable Node with(@Nullable Node node, List<Step> steps, @Nullable Node value) {
        if (steps.isEmpty()) {
            return value;
        }
        Step step = steps.get(0);
        boolean nothing = node == null || (node instanceof Node.Scalar s && s.isNothing());
        Node here = !nothing && node != null ? node : empty(step);
        int i = step.in(here);
        Node inside = with(i < 0 ? null : Step.child(here, i), steps.subList(1, steps.size()), value);
        Node changed = here instanceof Node.Mapping m ? entries(m, step, i, inside) : items(here, i, inside);
        return Step.size(changed) == 0 ? null : changed;
    }

    private static Node empty(Step step) {
        return step instanceof Step.Name
                ? new Node.Mapping(1, List.of())
                : new Node.Sequence(footing.io.form.Span.onLine(1), List.of());
    }

    private static Node entries(Node.Mapping group, Step step, int i, @Nullable Node inside) {
        List<Node.Entry> entries = new ArrayList<>(group.entries());
        if (i >= 0) {
            entries.remove(i);
        }
        if (inside != null && step instanceof Step.Name name) {
            entries.add(new Node.Entry(new Node.Scalar(1, name.name(), true), inside));
        }
        return new Node.Mapping(group.span(), entries);
    }

    private static Node items(Node list, int i, @Nullable Node inside) {
        List<Node> items = new ArrayList<>(list instanceof Node.Sequence s ? s.items() : List.of());
        if (i >= 0) {
            items.remove(i);
        }
        if (inside != null) {
            items.add(i < 0 ? items.size() : i, inside);
        }
        return new Node.Sequence(list.span(), items);
    }

    /** True if two trees say the same, whatever the order of their keys and their quotes. */
    static boolean alike(@Nullable Node a, @Nullable Node b) {
        if (a instanceof Node.Scalar x && b instanceof Node.Scalar y) {
            return x.text().equals(y.text()) && x.isNothing() == y.isNothing();
        }
        if (a == null || b == null || Step.size(a) != Step.size(b)) {
            return false;
        }
        if (a instanceof Node.Mapping x && b instanceof Node.Mapping) {
            return x.entries().stream().allMatch(e -> {
                int i = new Step.Name(e.key().text()).in(b);
                return i >= 0 && alike(e.value(), Step.child(b, i));
            });
        }
        if (a instanceof Node.Sequence x && b instanceof Node.Sequence y) {
            for (int i = 0; i < x.items().size(); i++) {
                if (!alike(x.items().get(i), y.items().get(i))) {
                    return false;
                }
            }
            return true;
        }
        return false;
    }
}
