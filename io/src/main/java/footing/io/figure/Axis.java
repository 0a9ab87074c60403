package footing.io.figure;

import java.util.List;

/**
 * An axis.
 *
 * @param names of its places, in order, where it has names instead of numbers
 */
public record Axis(String title, Unit unit, List<String> names) {
    public Axis {
        names = List.copyOf(names);
        if ((unit == Unit.NAME) == names.isEmpty()) {
            throw new IllegalArgumentException(title + ": an axis has names or a unit, not both and not neither");
        }
    }

    static Axis of(String title, Unit unit) {
        return new Axis(title, unit, List.of());
    }

    static Axis named(String title, List<String> names) {
        return new Axis(title, Unit.NAME, names);
    }

    /** The same, with the currency in the title where money is counted. */
    Axis in(String currency) {
        return unit == Unit.MONEY || unit == Unit.CENTS ? new Axis(title + ", " + currency, unit, names) : this;
    }

    /** A place or value as a reader sees it. */
    public String write(double x) {
        return unit == Unit.NAME ? names.get((int) x) : unit.write(x);
    }
}
