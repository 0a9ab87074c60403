package footing.io.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Reads YAML or JSON text into a tree. Built on the parser's events, because only there aliases, anchors and depth can
 * be refused before they cost anything.
 */
final class TreeReader {
    static final int MOST_DEPTH = 30;

    private final Problems problems;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;
    private int documents;

    private TreeReader(Problems problems) {
        this.problems = problems;
    }

    /** A list or mapping whose end hasn't come yet; a mapping's keys and values alternate. */
    private record Open(int line, boolean mapping, List<Node> nodes) {}

    /** The tree; null if there is none, with its problem reported. */
    static @Nullable Node read(String text, Problems problems) {
        TreeReader reader = new TreeReader(problems);
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(FileText.MOST_BYTES).build();
        try {
            for (Event event : new Parse(settings).parseString(text)) {
                if (!reader.take(event)) {
                    return null;
                }
            }
        } catch (RuntimeException e) {
            // Whatever the parser stumbles over on a damaged file, the file is what is wrong.
            problems.error(SyntaxTrouble.at(e, text), "", SyntaxTrouble.message(e), SyntaxTrouble.advice(e));
            return null;
        }
        return reader.root;
    }

    /** False if reading can't go on. */
    private boolean take(Event event) {
        At at = new At(line(event), "");
        if (event instanceof NodeEvent node && node.getAnchor().isPresent() && event.getEventId() != Event.ID.Alias) {
            problems.error(at, "&" + node.getAnchor().get(), "anchors are not read", "write the values out");
        }
        switch (event.getEventId()) {
            case DocumentStart -> {
                if (++documents > 1) {
                    problems.error(
                            at, "", "a second document begins here", "keep one document in a file, without '---'");
                    return false;
                }
            }
            case Alias -> {
                String name = "*"
                        + ((NodeEvent) event).getAnchor().map(Object::toString).orElse("");
                problems.error(at, name, "aliases are not read", "write the values out");
                put(new Node.Refused(at.line()));
            }
            case Scalar -> put(scalar((ScalarEvent) event, at));
            case SequenceStart, MappingStart -> {
                if (open.size() >= MOST_DEPTH) {
                    problems.error(
                            at, "", "nested deeper than " + MOST_DEPTH, "check the brackets and the indentation above");
                    return false;
                }
                open.push(new Open(at.line(), event.getEventId() == Event.ID.MappingStart, new ArrayList<>()));
                refuseTag(event, at);
            }
            case SequenceEnd, MappingEnd -> close();
            default -> {}
        }
        return true;
    }

    private Node scalar(ScalarEvent event, At at) {
        return refuseTag(event, at)
                ? new Node.Refused(at.line())
                : new Node.Scalar(at.line(), event.getValue(), event.isPlain());
    }

    private boolean refuseTag(Event event, At at) {
        Optional<String> tag = event instanceof ScalarEvent s
                ? s.getTag()
                : ((org.snakeyaml.engine.v2.events.CollectionStartEvent) event).getTag();
        tag.ifPresent(t -> problems.error(at, t, "tags are not read", "leave the tag out"));
        return tag.isPresent();
    }

    private void close() {
        Open closed = open.pop();
        put(closed.mapping() ? mapping(closed) : new Node.Sequence(closed.line(), closed.nodes()));
    }

    private Node mapping(Open closed) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (int i = 0; i + 1 < closed.nodes().size(); i += 2) {
            Node key = closed.nodes().get(i);
            At at = new At(key.line(), "");
            if (!(key instanceof Node.Scalar scalar)) {
                if (!(key instanceof Node.Refused)) {
                    problems.error(at, key, "a key must be a text", "write it as key: value");
                }
                continue;
            }
            Node.Entry first = entries.putIfAbsent(
                    scalar.text(), new Node.Entry(scalar, closed.nodes().get(i + 1)));
            if (first != null) {
                problems.error(
                        at,
                        scalar,
                        "this key stands twice, first on line " + first.key().line(),
                        "keep one of the two");
            }
        }
        return new Node.Mapping(closed.line(), List.copyOf(entries.values()));
    }

    private void put(Node node) {
        if (open.isEmpty()) {
            root = node;
        } else {
            open.peek().nodes().add(node);
        }
    }

    private static int line(Event event) {
        return event.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }
}
