package footing.io.form;

import java.util.Map;

/** What may stand at a place of a file. Says so in two languages: by checking a node, and as JSON Schema. */
public interface Form {
    /** Reports everything wrong with a node and what is under it. */
    void check(Node node, At at, Problems problems);

    /** The same as JSON Schema 2020-12. */
    Map<String, Object> schema();

    /** A value that fits, for advice. */
    String example();

    /** Reports a node that has the wrong shape, unless it has been refused already. */
    static void wrongShape(Node node, At at, Problems problems, String due, String advice) {
        if (node instanceof Node.Scalar s && s.isNothing()) {
            problems.error(at, "", "nothing stands here; " + due, advice);
        } else if (!(node instanceof Node.Refused)) {
            problems.error(at, node, due, advice);
        }
    }
}
