package footing.io.form;

import footing.core.chance.Spread;
import footing.core.fleet.Chance;
import footing.core.fleet.Key;
import footing.core.fleet.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A number of a {@link Key}: one value, or a three-point where the key carries chance. */
public record NumberForm(Key key) implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    /** The number; null if it can't be read, with its problem reported. */
    public @Nullable Spread read(Node node, At at, Problems problems) {
        if (node instanceof Node.Scalar scalar) {
            Amount amount = new AmountReader(key, at, problems).read(scalar);
            if (amount == null) {
                return null;
            }
            askIfUnusual(amount, scalar, at, problems);
            return Spread.of(amount.value());
        }
        if (node instanceof Node.Mapping mapping) {
            if (LearnedForm.isLearned(mapping)) {
                return LearnedForm.read(key, mapping, at, problems);
            }
            return new ThreePoint(key, at, problems).read(mapping);
        }
        Form.wrongShape(node, at, problems, "a number is due", "try: " + example());
        return null;
    }

    /** A slip of the pen is rarely impossible, but mostly unusual. */
    private void askIfUnusual(Amount amount, Node.Scalar scalar, At at, Problems problems) {
        key.ordinary()
                .filter(usual -> !usual.contains(amount.value()))
                .ifPresent(usual -> problems.warn(
                        at,
                        scalar.shown(),
                        "unusual: ordinarily from " + amount.write(usual.least()) + " to " + amount.write(usual.most()),
                        "if it is right, leave it"));
    }

    @Override
    public String example() {
        return example(key);
    }

    static String example(Key key) {
        Range range = key.range();
        double usual = key.fallback().isPresent() ? 0 : range.clamp(1);
        return switch (key.dimension()) {
            case MONEY -> "20";
            case COUNT -> Written.number(Math.max(range.clamp(2), usual));
            case METER_HOURS -> "650";
            case TIME -> "35 min";
            case SHARE -> "15 %";
        };
    }

    static String threePointExample(Key key) {
        return switch (key.dimension()) {
            case MONEY, COUNT -> "{low: 3, likely: 6, high: 11}";
            case METER_HOURS -> "{low: 450, likely: 650, high: 900}";
            case TIME -> "{low: 20 min, likely: 35 min, high: 65 min}";
            case SHARE -> "{low: 25 %, likely: 45 %, high: 70 %}";
        };
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> one = one();
        List<Map<String, Object>> ways = new ArrayList<>(List.of(one));
        if (key.chance() != Chance.NONE) {
            ways.add(three(one));
        }
        LearnedForm.word(key).ifPresent(word -> ways.add(learned(word, List.copyOf(ways))));
        return described(ways.size() == 1 ? one : Map.of("anyOf", ways));
    }

    private static Map<String, Object> three(Map<String, Object> one) {
        Map<String, Object> values = new LinkedHashMap<>();
        ThreePoint.NAMES.forEach(n -> values.put(n, one));
        Map<String, Object> three = new LinkedHashMap<>();
        three.put("type", "object");
        three.put("properties", values);
        three.put("required", ThreePoint.NAMES);
        three.put("additionalProperties", false);
        return three;
    }

    /** @param stated the ways to state it, for keys that keep what was stated */
    private Map<String, Object> learned(String word, List<Map<String, Object>> stated) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("learned", Map.of("const", word));
        if (LearnedForm.keepsStated(key)) {
            values.put("stated", Map.of("anyOf", stated));
        }
        Map<String, Object> learned = new LinkedHashMap<>();
        learned.put("type", "object");
        learned.put("properties", values);
        learned.put("required", List.copyOf(values.keySet()));
        learned.put("additionalProperties", false);
        return learned;
    }

    private Map<String, Object> described(Map<String, Object> schema) {
        Map<String, Object> result = new LinkedHashMap<>();
        String standsFor =
                key.fallback().map(d -> "; if not stated: " + d.why()).orElse("");
        Optional<String> chance = Optional.ofNullable(
                switch (key.chance()) {
                    case NONE -> null;
                    case UNKNOWN -> ", one draw for a whole future";
                    case VARIES -> ", a fresh draw each time";
                });
        result.put(
                "description",
                key.label() + " (" + AmountAdvice.words(key.dimension()) + chance.orElse("") + ")" + standsFor);
        result.putAll(schema);
        return result;
    }

    private Map<String, Object> one() {
        return switch (key.dimension()) {
            case MONEY, COUNT -> number();
            case METER_HOURS -> Map.of("anyOf", List.of(number(), Schemas.quantity(Quantity.TIME, least())));
            case TIME -> Schemas.quantity(Quantity.TIME, least());
            case SHARE -> Schemas.pattern(Schemas.number(least()) + "[ \\t]*%");
        };
    }

    private double least() {
        return key.range().least();
    }

    private Map<String, Object> number() {
        Range range = key.range();
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", range.whole() ? "integer" : "number");
        number.put(range.open() ? "exclusiveMinimum" : "minimum", range.least());
        number.put("maximum", range.most());
        return number;
    }
}
