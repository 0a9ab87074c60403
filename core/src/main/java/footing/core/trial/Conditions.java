package footing.core.trial;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The conditions of a run, as far as they were noted: measured ones in SI units, the others by name. */
public record Conditions(Map<Condition, Double> measured, Map<Condition, String> named) {
    public static final Conditions NONE = new Conditions(Map.of(), Map.of());

    public Conditions {
        measured = Map.copyOf(measured);
        named = Map.copyOf(named);
        if (!measured.keySet().stream().allMatch(Condition::isMeasured)
                || named.keySet().stream().anyMatch(Condition::isMeasured)) {
            throw new IllegalArgumentException("a condition is measured or named, not either");
        }
        if (!measured.values().stream().allMatch(v -> Math.abs(v) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a measured condition is a number");
        }
    }

    public @Nullable Double number(Condition condition) {
        return measured.get(condition);
    }

    public @Nullable String name(Condition condition) {
        return named.get(condition);
    }

    /** These, and for what was not noted here those of a whole side. */
    public Conditions over(Conditions usual) {
        Map<Condition, Double> numbers = new EnumMap<>(Condition.class);
        numbers.putAll(usual.measured);
        numbers.putAll(measured);
        Map<Condition, String> names = new EnumMap<>(Condition.class);
        names.putAll(usual.named);
        names.putAll(named);
        return new Conditions(numbers, names);
    }
}
