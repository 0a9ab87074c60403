package footing.io.form;

import footing.core.fleet.Measure;
import footing.core.fleet.Physical;
import footing.core.fleet.Range;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A value of a {@link Measure}: a quantity with its unit, a bare number, or a share. */
public record BodyForm(Measure measure) implements Form {
    private static final int DIGITS = 3;

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    /** The value in SI units; null if it can't be read, with its problem reported. */
    public @Nullable Double read(Node node, At at, Problems problems) {
        Double value = switch (measure.physical()) {
            case NUMBER -> number(node, at, problems);
            case SHARE -> new ShareForm().read(node, at, problems);
            default -> quantity().read(node, at, problems);
        };
        return value == null || inRange(value, node, at, problems) ? value : null;
    }

    private MeasureForm quantity() {
        return new MeasureForm(unitsOf(measure.physical()), measure.physical() == Physical.SHIFT);
    }

    private static Quantity unitsOf(Physical physical) {
        return switch (physical) {
            case LENGTH, SHIFT -> Quantity.LENGTH;
            case MASS -> Quantity.MASS;
            case PRESSURE -> Quantity.PRESSURE;
            case SPEED -> Quantity.SPEED;
            case STIFFNESS -> Quantity.STIFFNESS;
            case NUMBER, SHARE -> throw new IllegalArgumentException(physical + " has no units");
        };
    }

    private @Nullable Double number(Node node, At at, Problems problems) {
        if (node instanceof Node.Scalar scalar && scalar.plain()) {
            Optional<Literal> literal = Literal.of(scalar.text()).filter(Literal::isBare);
            if (literal.isPresent() && Double.isFinite(literal.get().value())) {
                return literal.get().value();
            }
        }
        Form.wrongShape(node, at, problems, "a plain number is due", "try: " + example());
        return null;
    }

    private boolean inRange(double value, Node node, At at, Problems problems) {
        Range range = measure.range();
        if (range.contains(value)) {
            return true;
        }
        boolean broken = range.whole() && value != Math.rint(value);
        problems.error(
                at,
                node,
                broken ? "a whole number is due" : "outside the values this key takes",
                "try: " + (range.whole() ? "a whole number " : "a value ") + (range.open() ? "above " : "from ")
                        + written(range.least(), node) + (range.open() ? ", up to " : " to ")
                        + written(range.most(), node));
        return false;
    }

    /** In the unit it was written in. */
    private String written(double value, Node node) {
        String unit = node instanceof Node.Scalar s
                ? Literal.of(s.text()).map(Literal::unit).orElse("")
                : "";
        return switch (measure.physical()) {
            case NUMBER -> Written.number(value);
            case SHARE -> Written.number(100 * value) + " %";
            default ->
                unitsOf(measure.physical())
                        .unit(unit)
                        .map(u -> Written.coarse(u.fromOwn(value), DIGITS, RoundingMode.DOWN) + " " + unit)
                        .orElse(Written.number(value));
        };
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("description", measure.label());
        switch (measure.physical()) {
            case NUMBER -> bounds(schema);
            case SHARE -> schema.putAll(new ShareForm().schema());
            default -> schema.putAll(quantity().schema());
        }
        return schema;
    }

    private void bounds(Map<String, Object> schema) {
        Range range = measure.range();
        schema.put("type", range.whole() ? "integer" : "number");
        schema.put(range.open() ? "exclusiveMinimum" : "minimum", range.least());
        schema.put("maximum", range.most());
    }

    @Override
    public String example() {
        return switch (measure.physical()) {
            case NUMBER -> Written.number(measure.range().whole() ? 5 : 2);
            case SHARE -> "34 %";
            default -> quantity().example();
        };
    }
}
