package footing.core.fleet;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What somebody stated of the body of one assembly or machine, in SI units, each with where it comes from.
 *
 * @param seat of the lug nuts; null if nobody said
 */
public record Measures(
        Map<Measure, Stated> stated, @Nullable Seat seat) {
    public static final Measures NONE = new Measures(Map.of(), null);

    /** A value and its origin. */
    public record Stated(double value, Origin origin) {}

    public Measures {
        stated = Map.copyOf(stated);
    }

    /** Somebody's own values. */
    public static Measures of(Map<Measure, Double> values) {
        Map<Measure, Stated> stated = new TreeMap<>();
        values.forEach((m, x) -> stated.put(m, new Stated(x, Origin.STATED)));
        return new Measures(stated, null);
    }

    public boolean isEmpty() {
        return stated.isEmpty() && seat == null;
    }

    public boolean has(Measure measure) {
        return stated.containsKey(measure);
    }

    public OptionalDouble get(Measure measure) {
        Stated found = stated.get(measure);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found.value());
    }

    /** Where a value comes from; {@link Origin#DEFAULT} for one that isn't there. */
    public Origin origin(Measure measure) {
        Stated found = stated.get(measure);
        return found == null ? Origin.DEFAULT : found.origin();
    }

    /** These, and what only the others know. */
    public Measures orElse(Measures others) {
        Map<Measure, Stated> all = new TreeMap<>(others.stated);
        all.putAll(stated);
        return new Measures(all, seat == null ? others.seat : seat);
    }

    public Measures with(Measure measure, double value) {
        Map<Measure, Stated> all = new TreeMap<>(stated);
        all.put(measure, new Stated(value, Origin.STATED));
        return new Measures(all, seat);
    }

    public Measures with(Seat other) {
        return new Measures(stated, other);
    }

    /** These without one value. */
    public Measures without(Measure measure) {
        Map<Measure, Stated> rest = new TreeMap<>(stated);
        rest.remove(measure);
        return new Measures(rest, seat);
    }
}
