package footing.io.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
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

    private static final Mark NOWHERE = new Mark("", 0, 0, 0, new int[0], 0);

    private final Problems problems;
    private final BitSet guesses;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;
    private int documents;

    private TreeReader(Problems problems, BitSet guesses) {
        this.problems = problems;
        this.guesses = guesses;
    }

    /** A list or mapping whose end hasn't come yet; a mapping's keys and values alternate. */
    private record Open(Span start, boolean mapping, boolean flow, List<Node> nodes) {
        Span until(Span closing) {
            int last = nodes.isEmpty()
                    ? start.start()
                    : nodes.get(nodes.size() - 1).span().end();
            return new Span(start.line(), start.column(), start.start(), flow ? closing.end() : last);
        }
    }

    /** The tree; null if there is none, with its problem reported. */
    static @Nullable Node read(String text, Problems problems) {
        TreeReader reader = new TreeReader(problems, GuessMarks.lines(text));
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
        switch (event.getEventId()) {
            case DocumentStart -> {
                if (++documents > 1) {
                    String advice = "keep one document in a file, without '---'";
                    problems.error(at(event), "", "a second document begins here", advice);
                    return false;
                }
            }
            case Alias -> {
                String name = ((NodeEvent) event).getAnchor().map(a -> "*" + a).orElse("*");
                problems.error(at(event), name, "aliases are not read", "write the values out");
                put(new Node.Refused(span(event)));
            }
            case Scalar -> put(scalar((ScalarEvent) event));
            case SequenceStart, MappingStart -> {
                return begin((CollectionStartEvent) event);
            }
            case SequenceEnd, MappingEnd -> close(span(event));
            default -> {}
        }
        return true;
    }

    private Node scalar(ScalarEvent event) {
        refuseAnchor(event);
        return refuseTag(event, event.getTag())
                ? new Node.Refused(span(event))
                : new Node.Scalar(span(event), event.getValue(), event.isPlain());
    }

    private boolean begin(CollectionStartEvent event) {
        if (open.size() >= MOST_DEPTH) {
            String advice = "check the brackets and the indentation above";
            problems.error(at(event), "", "nested deeper than " + MOST_DEPTH, advice);
            return false;
        }
        refuseAnchor(event);
        var unused = refuseTag(event, event.getTag());
        boolean mapping = event.getEventId() == Event.ID.MappingStart;
        open.push(new Open(span(event), mapping, event.isFlow(), new ArrayList<>()));
        return true;
    }

    private void refuseAnchor(NodeEvent event) {
        event.getAnchor()
                .ifPresent(a -> problems.error(at(event), "&" + a, "anchors are not read", "write the values out"));
    }

    private boolean refuseTag(Event event, Optional<String> tag) {
        tag.ifPresent(t -> problems.error(at(event), t, "tags are not read", "leave the tag out"));
        return tag.isPresent();
    }

    private void close(Span closing) {
        Open closed = open.pop();
        Span span = closed.until(closing);
        put(closed.mapping() ? mapping(closed, span) : new Node.Sequence(span, closed.nodes()));
    }

    private Node mapping(Open closed, Span span) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (int i = 0; i + 1 < closed.nodes().size(); i += 2) {
            Node key = closed.nodes().get(i);
            At at = new At(key.line(), path());
            if (!(key instanceof Node.Scalar scalar)) {
                if (!(key instanceof Node.Refused)) {
                    problems.error(at, key, "a key must be a text", "write it as key: value");
                }
                continue;
            }
            Node.Entry first = entries.putIfAbsent(
                    scalar.text(), new Node.Entry(scalar, closed.nodes().get(i + 1), guesses.get(scalar.line())));
            if (first != null) {
                problems.error(
                        at.key(key.line(), scalar.text()),
                        "",
                        "this key stands twice, first on line " + first.key().line(),
                        "keep one of the two");
            }
        }
        return new Node.Mapping(span, List.copyOf(entries.values()));
    }

    private void put(Node node) {
        if (open.isEmpty()) {
            root = node;
        } else {
            open.peek().nodes().add(node);
        }
    }

    private At at(Event event) {
        return new At(line(event), path());
    }

    /** The keys and indices that lead to what comes next. */
    private String path() {
        At at = At.TOP;
        for (Iterator<Open> i = open.descendingIterator(); i.hasNext(); ) {
            Open part = i.next();
            int size = part.nodes().size();
            if (!part.mapping()) {
                at = at.item(part.start().line(), size);
            } else if (size % 2 == 1 && part.nodes().get(size - 1) instanceof Node.Scalar key) {
                at = at.key(part.start().line(), key.text());
            }
        }
        return at.path();
    }

    private static int line(Event event) {
        return span(event).line();
    }

    private static Span span(Event event) {
        Mark start = event.getStartMark().orElse(NOWHERE);
        Mark end = event.getEndMark().orElse(start);
        return new Span(start.getLine() + 1, start.getColumn(), start.getIndex(), end.getIndex());
    }
}
