package footing.io.edit;

import footing.io.form.FileText;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What stands in a case file, as it is written there, by the paths of {@link CaseEdit}. */
public final class Standing {
    private static final String NOTHING = "";

    private final @Nullable Node root;

    private Standing(@Nullable Node root) {
        this.root = root;
    }

    /** Of a text; nothing stands in one that can't be read. */
    public static Standing of(String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return new Standing(FileText.tree(body, new Problems(NOTHING)));
    }

    /** The value at a path; empty if there is none, or a group or list. */
    public Optional<String> value(String path) {
        return node(path) instanceof Node.Scalar s && !s.isNothing() ? Optional.of(s.text()) : Optional.empty();
    }

    /** True if anything is stated at a path: a value, a group or a list. */
    public boolean has(String path) {
        return node(path) != null;
    }

    /** True if what is stated at a path is a group. */
    public boolean isGroup(String path) {
        return node(path) instanceof Node.Mapping;
    }

    private @Nullable Node node(String path) {
        return root == null ? null : Route.of(path, root).find(root);
    }
}
