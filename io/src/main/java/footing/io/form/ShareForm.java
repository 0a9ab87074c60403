package footing.io.form;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A share of 0 % to 100 % that belongs to no key. */
public record ShareForm() implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable Double read(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            Form.wrongShape(node, at, problems, "a share is due", "try: " + example());
            return null;
        }
        Optional<Literal> literal =
                Literal.of(scalar.text()).filter(l -> l.unit().equals("%"));
        if (literal.isEmpty()) {
            problems.error(at, scalar, "a share is a number with a percent sign", "try: " + example());
            return null;
        }
        double share = literal.get().percent();
        if (!(share >= 0 && share <= 1)) {
            problems.error(at, scalar, "a share lies from 0 % to 100 %", "try: " + example());
            return null;
        }
        return share;
    }

    @Override
    public Map<String, Object> schema() {
        return Schemas.pattern(Schemas.number(0) + "[ \\t]*%");
    }

    @Override
    public String example() {
        return "20 %";
    }
}
