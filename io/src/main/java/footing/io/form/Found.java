package footing.io.form;

import footing.core.chance.Spread;
import footing.core.fleet.Key;
import footing.core.fleet.Measure;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * A part of a checked file, from which values are taken. What is missing or was found wrong is simply not there: its
 * problem has been reported by the check.
 */
public record Found(@Nullable Node node, At at, boolean guess) {
    public Found(@Nullable Node node, At at) {
        this(node, at, false);
    }

    public boolean has(String name) {
        return entry(name) != null;
    }

    public boolean isList() {
        return node instanceof Node.Sequence;
    }

    public boolean isGroup() {
        return node instanceof Node.Mapping;
    }

    /** What stands at a key; an empty part at this place if the key is missing. */
    public Found get(String name) {
        Node.Entry entry = entry(name);
        return entry == null
                ? new Found(null, at.key(at.line(), name))
                : new Found(entry.value(), at.key(entry.key().line(), name), entry.guess());
    }

    public List<Found> items() {
        List<Found> items = new ArrayList<>();
        if (node instanceof Node.Sequence sequence) {
            for (int i = 0; i < sequence.items().size(); i++) {
                items.add(new Found(sequence.items().get(i), ListForm.itemAt(sequence, i, at)));
            }
        }
        return items;
    }

    /** Parts by id, in the order of the file. */
    public Map<String, Found> named() {
        Map<String, Found> named = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            for (Node.Entry e : mapping.entries()) {
                String id = e.key().text();
                named.put(id, new Found(e.value(), at.key(e.key().line(), id)));
            }
        }
        return named;
    }

    /** What stands here, for a message; empty if nothing does. */
    public String shown() {
        return node == null ? "" : node.shown();
    }

    public @Nullable String text() {
        return read((n, p) -> TextForm.text("").read(n, at, p));
    }

    public @Nullable String text(String name) {
        return get(name).text();
    }

    public @Nullable Boolean flag(String name) {
        return get(name).read((n, p) -> new FlagForm().read(n, at, p));
    }

    public @Nullable LocalDate date(String name) {
        return get(name).read((n, p) -> new DateForm().read(n, at, p));
    }

    public @Nullable MonthDay day(String name) {
        return get(name).read((n, p) -> new DayForm().read(n, at, p));
    }

    public @Nullable Double share() {
        return read((n, p) -> new ShareForm().read(n, at, p));
    }

    public @Nullable Spread number(Key key) {
        return read((n, p) -> new NumberForm(key).read(n, at, p));
    }

    /** A measured value in SI units. */
    public @Nullable Double body(Measure measure) {
        return read((n, p) -> new BodyForm(measure).read(n, at, p));
    }

    /** The numbers of a place that could be read. */
    public Numbers numbers(Place place, Origin origin) {
        Map<Key, Numbers.Stated> stated = new TreeMap<>();
        for (Key key : Key.of(place)) {
            Found there = this;
            for (String part : key.key().split("\\.", -1)) {
                there = there.get(part);
            }
            Spread value = key == Key.UPCHARGE ? null : there.number(key);
            if (value != null) {
                boolean learned = LearnedForm.isLearned(there.node);
                Origin whose = there.guess && origin == Origin.STATED ? Origin.GUESSED : origin;
                stated.put(key, new Numbers.Stated(value, learned ? Origin.LEARNED : whose));
                if (learned && key == Key.LIFE) {
                    // How unsure the life is comes from the records too; a stated one below takes its place.
                    stated.put(Key.LIFE_UNSURE, new Numbers.Stated(Spread.of(0), Origin.LEARNED));
                }
            }
        }
        return new Numbers(stated);
    }

    private <T> @Nullable T read(BiFunction<Node, Problems, @Nullable T> reader) {
        return Optional.ofNullable(node)
                .map(n -> reader.apply(n, Problems.unheard()))
                .orElse(null);
    }

    private Node.@Nullable Entry entry(String name) {
        if (node instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries()) {
                if (entry.key().text().equals(name)) {
                    return entry;
                }
            }
        }
        return null;
    }
}
