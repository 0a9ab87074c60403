package footing.io.form;

import footing.core.fleet.Dimension;
import footing.core.fleet.Key;
import footing.core.fleet.Range;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads one number of a key: the form its dimension asks for, then its range. */
final class AmountReader {
    private final Key key;
    private final At at;
    private final Problems problems;

    AmountReader(Key key, At at, Problems problems) {
        this.key = key;
        this.at = at;
        this.problems = problems;
    }

    @Nullable
    Amount read(Node.Scalar scalar) {
        if (scalar.isNothing()) {
            problems.error(at, "", "nothing stands here", "try: " + NumberForm.example(key));
            return null;
        }
        Optional<Literal> literal = Literal.of(scalar.text());
        if (literal.isEmpty()) {
            problems.error(at, scalar, AmountAdvice.notANumber(key, scalar.text()), AmountAdvice.guess(key, scalar));
            return null;
        }
        Amount amount = amount(scalar, literal.get());
        return amount == null || !inRange(scalar, amount) ? null : amount;
    }

    private @Nullable Amount amount(Node.Scalar scalar, Literal literal) {
        Dimension dimension = key.dimension();
        if (literal.isBare()) {
            boolean fits = dimension != Dimension.TIME && dimension != Dimension.SHARE && scalar.plain();
            return fits ? new Amount(literal.value(), "", dimension) : fault(scalar, literal);
        }
        if (dimension == Dimension.SHARE && literal.unit().equals("%")) {
            return new Amount(literal.percent(), "%", dimension);
        }
        if (dimension == Dimension.TIME || dimension == Dimension.METER_HOURS) {
            Optional<Quantity.Unit> unit = Quantity.TIME.unit(literal.unit());
            if (unit.isPresent()) {
                return new Amount(unit.get().toOwn(literal.value()), literal.unit(), dimension);
            }
        }
        return fault(scalar, literal);
    }

    private @Nullable Amount fault(Node.Scalar scalar, Literal literal) {
        if (literal.isBare() && literal.value() < 0 && key.range().least() >= 0) {
            problems.error(at, scalar, "below zero, which this key does not take", "try: " + NumberForm.example(key));
            return null;
        }
        problems.error(at, scalar, AmountAdvice.wrongForm(key, literal), AmountAdvice.rightForm(key, literal));
        return null;
    }

    private boolean inRange(Node.Scalar scalar, Amount amount) {
        Range range = key.range();
        if (range.contains(amount.value())) {
            return true;
        }
        if (!Double.isFinite(amount.value())) {
            problems.error(at, scalar, "no number this large is read", "try: " + NumberForm.example(key));
        } else if (range.whole() && amount.value() != Math.rint(amount.value())) {
            problems.error(at, scalar, "a whole number is due", AmountAdvice.range(amount, range));
        } else {
            problems.error(at, scalar, "outside the values this key takes", AmountAdvice.range(amount, range));
        }
        return false;
    }
}
