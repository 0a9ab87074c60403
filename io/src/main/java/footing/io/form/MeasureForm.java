package footing.io.form;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A physical quantity with its unit; above zero unless {@code signed}. */
public record MeasureForm(Quantity quantity, boolean signed) implements Form {
    public static MeasureForm of(Quantity quantity) {
        return new MeasureForm(quantity, false);
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    /** The value in the quantity's own unit; null if it can't be read, with its problem reported. */
    public @Nullable Double read(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            Form.wrongShape(node, at, problems, quantity.words() + " with its unit is due", "try: " + example());
            return null;
        }
        Optional<Literal> literal = Literal.of(scalar.text());
        Optional<Quantity.Unit> unit = literal.flatMap(l -> quantity.unit(l.unit()));
        if (unit.isEmpty()) {
            String fits = "; " + quantity.unitNames() + " would fit";
            String number = literal.filter(l -> Math.abs(l.value()) < 1e15)
                    .map(l -> l.digits() + " " + quantity.units().get(0).name())
                    .orElse(example());
            boolean bare = literal.filter(Literal::isBare).isPresent();
            problems.error(
                    at,
                    scalar,
                    quantity.words() + (bare ? " needs its unit" : " is a number with its unit") + fits,
                    "try: " + number);
            return null;
        }
        double value = unit.get().toOwn(literal.get().value());
        if (!(Double.isFinite(value) && (signed || value > 0))) {
            problems.error(at, scalar, quantity.words() + " above zero is due", "try: " + example());
            return null;
        }
        return value;
    }

    @Override
    public Map<String, Object> schema() {
        return Schemas.quantity(quantity, signed ? -1 : 0);
    }

    @Override
    public String example() {
        return quantity.example();
    }
}
