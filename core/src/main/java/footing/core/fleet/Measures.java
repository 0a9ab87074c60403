package footing.core.fleet;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What somebody stated of the body of one assembly or machine, in SI units, each with where it comes from.
 *
 * @param seat of the lug nuts; null if nobody said
 * @param printed where the print comes from, if it was taken in a trial; null for one that was stated
 */
public record Measures(
        Map<Measure, Stated> stated,
        @Nullable Seat seat,
        @Nullable Printed printed) {
    public static final Measures NONE = new Measures(Map.of(), null);

    private static final List<Measure> PRINT = List.of(
            Measure.PRINT_LENGTH, Measure.PRINT_WIDTH, Measure.PRINT_SHAPE, Measure.PRINT_LOAD, Measure.PRINT_PRESSURE);

    /** A value and its origin. */
    public record Stated(double value, Origin origin) {}

    /**
     * Prints taken in trials.
     *
     * @param assembly of which
     * @param count how many, of which the print is the mean
     * @param days on which, in order, as far as noted
     * @param trials their titles
     */
    public record Printed(String assembly, int count, List<String> days, List<String> trials) {
        public Printed {
            days = List.copyOf(days);
            trials = List.copyOf(trials);
        }
    }

    public Measures {
        stated = Map.copyOf(stated);
    }

    /** With no print taken in a trial. */
    public Measures(Map<Measure, Stated> stated, @Nullable Seat seat) {
        this(stated, seat, null);
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
        Printed whose = has(Measure.PRINT_LENGTH) ? printed : others.printed;
        return new Measures(all, seat == null ? others.seat : seat, whose);
    }

    public Measures with(Measure measure, double value) {
        Map<Measure, Stated> all = new TreeMap<>(stated);
        all.put(measure, new Stated(value, Origin.STATED));
        return new Measures(all, seat, printed);
    }

    /** These with a print that was taken in trials in place of any other. */
    public Measures withPrint(Map<Measure, Double> print, Printed from) {
        Map<Measure, Stated> all = new TreeMap<>(stated);
        all.keySet().removeAll(PRINT);
        print.forEach((m, x) -> all.put(m, new Stated(x, Origin.STATED)));
        return new Measures(all, seat, from);
    }

    public Measures with(Seat other) {
        return new Measures(stated, other, printed);
    }

    /** These without one value. */
    public Measures without(Measure measure) {
        Map<Measure, Stated> rest = new TreeMap<>(stated);
        rest.remove(measure);
        return new Measures(rest, seat, measure == Measure.PRINT_LENGTH ? null : printed);
    }
}
