package footing.io.form;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Chance;
import footing.core.fleet.Key;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads {low, likely, high}: the 10th, 50th and 90th percentile of a metalog. */
final class ThreePoint {
    static final List<String> NAMES = List.of("low", "likely", "high");

    private final Key key;
    private final At at;
    private final Problems problems;

    ThreePoint(Key key, At at, Problems problems) {
        this.key = key;
        this.at = at;
        this.problems = problems;
    }

    @Nullable
    Spread read(Node.Mapping mapping) {
        if (key.chance() == Chance.NONE) {
            problems.error(at, mapping, "one value is due here, not three", "try: " + oneValue(mapping));
            return null;
        }
        Map<String, Amount> amounts = amounts(mapping);
        return amounts.size() < NAMES.size() ? null : spread(mapping, amounts);
    }

    private String oneValue(Node.Mapping mapping) {
        return mapping.entries().stream()
                .filter(e -> e.key().text().equals("likely"))
                .findFirst()
                .map(e -> e.value().shown())
                .orElse(NumberForm.example(key));
    }

    private Map<String, Amount> amounts(Node.Mapping mapping) {
        Map<String, Amount> amounts = new LinkedHashMap<>();
        List<String> missing = new ArrayList<>(NAMES);
        for (Node.Entry entry : mapping.entries()) {
            String name = entry.key().text();
            At here = at.key(entry.key().line(), name);
            if (!NAMES.contains(name)) {
                problems.unknown(here, name, "a three-point has no such key", NAMES);
                continue;
            }
            missing.remove(name);
            Amount amount = amount(entry.value(), here);
            if (amount != null) {
                amounts.put(name, amount);
            }
        }
        if (!missing.isEmpty()) {
            String lacks = "a three-point needs " + String.join(" and ", missing);
            problems.error(at, mapping, lacks, "try: " + NumberForm.threePointExample(key));
        }
        return amounts;
    }

    private @Nullable Amount amount(Node node, At here) {
        if (node instanceof Node.Scalar scalar) {
            return new AmountReader(key, here, problems).read(scalar);
        }
        if (!(node instanceof Node.Refused)) {
            problems.error(here, node, "one value is due here", "try: " + NumberForm.example(key));
        }
        return null;
    }

    private @Nullable Spread spread(Node.Mapping mapping, Map<String, Amount> amounts) {
        double[] x = NAMES.stream()
                .mapToDouble(
                        n -> java.util.Objects.requireNonNull(amounts.get(n)).value())
                .toArray();
        Amount like = java.util.Objects.requireNonNull(amounts.get("likely"));
        Bounds bounds = key.dimension().bounds();
        ThreePointAdvice advice = new ThreePointAdvice(x[0], x[1], x[2], bounds, like);
        String fault = advice.fault();
        if (fault.isEmpty()) {
            return new Metalog(x[0], x[1], x[2], bounds);
        }
        problems.error(at, mapping, fault, advice.wouldFit());
        return null;
    }
}
