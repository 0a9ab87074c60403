package footing.io.edit;

import footing.io.form.Node;
import footing.io.form.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Changes the text of a file at one place of its tree. Nothing of the rest is written anew. */
final class Splice {
    private final Letters letters;
    private final Node root;
    private final Writing writing;

    Splice(String text, Node root) {
        letters = new Letters(text);
        this.root = root;
        writing = Writing.of(root);
    }

    /** The text with a value set; empty if the way leads to no place a value could stand. */
    Optional<String> set(List<Step> steps, Typed value) {
        Node here = root;
        Node.@Nullable Scalar key = null;
        for (int depth = 0; depth < steps.size(); depth++) {
            int i = steps.get(depth).in(here);
            if (i < 0) {
                return insert(here, steps, depth, value);
            }
            key = here instanceof Node.Mapping m ? m.entries().get(i).key() : null;
            here = Step.child(here, i);
        }
        return Optional.of(replace(here, key, value));
    }

    /** The text without what stands at the end of the way, and without what that leaves empty. */
    String remove(List<Step> steps) {
        int depth = steps.size() - 1;
        while (depth > 0 && Step.size(parent(steps, depth)) == 1) {
            depth--;
        }
        Node parent = parent(steps, depth);
        return Step.size(parent) == 1
                ? letters.text()
                : new Members(letters, parent).without(steps.get(depth).in(parent));
    }

    private Node parent(List<Step> steps, int depth) {
        Node here = root;
        for (Step step : steps.subList(0, depth)) {
            here = Step.child(here, step.in(here));
        }
        return here;
    }

    private Optional<String> insert(Node here, List<Step> steps, int depth, Typed value) {
        Step step = steps.get(depth);
        Optional<String> nested = nested(steps.subList(depth + 1, steps.size()), writing.write(value));
        if (nested.isEmpty()) {
            return nested;
        }
        if (here instanceof Node.Mapping group && step instanceof Step.Name name) {
            int i = Order.place(group, steps.subList(0, depth), name.name());
            return Optional.of(new Members(letters, here).inserted(i, writing.entry(name.name(), nested.get())));
        }
        if (here instanceof Node.Sequence && step.equals(new Step.Index(Step.size(here)))) {
            return Optional.of(new Members(letters, here).inserted(Step.size(here), nested.get()));
        }
        if (here instanceof Node.Scalar nothing && nothing.isNothing()) {
            return nested(steps.subList(depth, steps.size()), writing.write(value))
                    .map(v -> put(here.span(), v));
        }
        return Optional.empty();
    }

    /** A value inside the groups and lists that lead to it, in brackets. */
    private Optional<String> nested(List<Step> steps, String value) {
        String text = value;
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i) instanceof Step.Name name) {
                text = "{" + writing.entry(name.name(), text) + "}";
            } else if (steps.get(i).equals(new Step.Index(0))) {
                text = "[" + text + "]";
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(text);
    }

    private String replace(Node before, Node.@Nullable Scalar key, Typed value) {
        if (before instanceof Node.Scalar old
                && value.node() instanceof Node.Scalar now
                && value.verbatim().isEmpty()) {
            char mark = letters.charAt(letters.start(old.span()));
            return put(old.span(), writing.inPlaceOf(old, now, mark));
        }
        if (before instanceof Node.Mapping old && value.node() instanceof Node.Mapping now && sameNames(old, now)) {
            return eachOf(old, now);
        }
        String text = writing.write(value);
        int start = letters.start(before.span());
        if (key != null && letters.charAt(start) != '{' && letters.charAt(start) != '[' && Step.size(before) > 0) {
            // What stood on lines of its own moves up beside its key, unless a comment is in between.
            int colon = letters.text().indexOf(':', letters.end(key.span()));
            boolean clear = letters.text().substring(colon + 1, start).isBlank();
            return letters.replaced(clear ? colon + 1 : start, letters.end(before.span()), (clear ? " " : "") + text);
        }
        return put(before.span(), text);
    }

    private static boolean sameNames(Node.Mapping old, Node.Mapping now) {
        List<String> names = now.entries().stream().map(e -> e.key().text()).toList();
        return old.entries().size() == names.size()
                && old.entries().stream()
                        .allMatch(e -> e.value() instanceof Node.Scalar
                                && names.contains(e.key().text()))
                && now.entries().stream().allMatch(e -> e.value() instanceof Node.Scalar);
    }

    /** Each value of a three-point in its place, the last first, so that the spans before it hold. */
    private String eachOf(Node.Mapping old, Node.Mapping now) {
        String text = letters.text();
        List<Node.Entry> entries = new ArrayList<>(old.entries());
        for (int i = entries.size() - 1; i >= 0; i--) {
            Node.Scalar before = (Node.Scalar) entries.get(i).value();
            String name = entries.get(i).key().text();
            Node.Scalar after = (Node.Scalar) Step.child(now, new Step.Name(name).in(now));
            int start = letters.start(before.span());
            int end = letters.end(before.span());
            text = text.substring(0, start)
                    + writing.inPlaceOf(before, after, letters.charAt(start))
                    + text.substring(end);
        }
        return text;
    }

    private String put(Span span, String text) {
        int start = letters.start(span);
        boolean joined = start == letters.end(span) && start > 0 && !Character.isWhitespace(letters.charAt(start - 1));
        return letters.replaced(start, letters.end(span), joined ? " " + text : text);
    }
}
