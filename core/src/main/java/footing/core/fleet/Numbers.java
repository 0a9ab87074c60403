package footing.core.fleet;

import footing.core.chance.Spread;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The numbers somebody stated at one place of a case, each with where it comes from. */
public record Numbers(Map<Key, Stated> stated) {
    public static final Numbers NONE = new Numbers(Map.of());

    /**
     * A value and its origin.
     *
     * @param before what was stated before records took its place; the value itself for all others
     */
    public record Stated(Spread value, Origin origin, Spread before) {
        public Stated(Spread value, Origin origin) {
            this(value, origin, value);
        }
    }

    public Numbers {
        stated = Map.copyOf(stated);
    }

    public static Numbers of(Map<Key, Spread> values) {
        Map<Key, Stated> stated = new TreeMap<>();
        values.forEach((key, value) -> stated.put(key, new Stated(value, Origin.STATED)));
        return new Numbers(stated);
    }

    public Optional<Spread> get(Key key) {
        return Optional.ofNullable(stated.get(key)).map(Stated::value);
    }

    /** What was stated before records took its place, so that they teach the same however often they are asked. */
    public Optional<Spread> before(Key key) {
        return Optional.ofNullable(stated.get(key)).map(Stated::before);
    }

    public Origin origin(Key key) {
        Stated found = stated.get(key);
        return found == null ? Origin.DEFAULT : found.origin();
    }

    /** The same with one value put in; its origin stays if it had one. */
    public Numbers with(Key key, Spread value) {
        Map<Key, Stated> changed = new TreeMap<>(stated);
        Stated was = stated.get(key);
        Origin origin = was == null ? Origin.STATED : was.origin;
        changed.put(
                key,
                was != null && origin == Origin.LEARNED
                        ? new Stated(value, origin, was.before)
                        : new Stated(value, origin));
        return new Numbers(changed);
    }
}
