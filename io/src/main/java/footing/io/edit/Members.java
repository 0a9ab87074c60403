package footing.io.edit;

import footing.io.form.Node;
import footing.io.form.Span;

/** The entries of a group or the items of a list, as stretches of the text: in brackets, or each on a line. */
final class Members {
    private final Letters letters;
    private final Node node;
    private final boolean brackets;

    Members(Letters letters, Node node) {
        this.letters = letters;
        this.node = node;
        char first = letters.charAt(letters.start(node.span()));
        brackets = first == '{' || first == '[';
    }

    int size() {
        return Step.size(node);
    }

    /** The text with a member put before the i-th, or at the end. */
    String inserted(int i, String member) {
        if (size() == 0) {
            int inside = letters.start(node.span()) + 1;
            return letters.replaced(inside, inside, member);
        }
        if (i == 0) {
            String gap = brackets ? ", " : letters.lineBreak() + indent();
            return letters.replaced(start(0), start(0), member + gap);
        }
        int end = end(i - 1);
        if (brackets) {
            return letters.replaced(end, end, ", " + member);
        }
        String line = indent() + member;
        boolean onNext = letters.charAt(end - 1) == '\n';
        int at = onNext ? end : letters.lineEnd(end);
        return letters.replaced(at, at, onNext ? line + letters.lineBreak() : letters.lineBreak() + line);
    }

    /** The text without the i-th of several members. */
    String without(int i) {
        if (i == 0) {
            return letters.replaced(start(0), start(1), "");
        }
        return brackets
                ? letters.replaced(end(i - 1), end(i), "")
                : letters.replaced(letters.lineEndBefore(start(i)), letters.lineEnd(end(i)), "");
    }

    private String indent() {
        String blanks = " ".repeat(node.span().column());
        return node instanceof Node.Sequence && !brackets ? blanks + "- " : blanks;
    }

    private int start(int i) {
        if (node instanceof Node.Mapping mapping) {
            return letters.start(mapping.entries().get(i).key().span());
        }
        int at = letters.start(Step.child(node, i).span());
        if (brackets) {
            return at;
        }
        while (at > 0 && letters.charAt(at) != '-') {
            at--;
        }
        return at;
    }

    private int end(int i) {
        Span value = Step.child(node, i).span();
        return letters.end(value);
    }
}
