package footing.io.form;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A currency by its ISO 4217 code. */
public record CurrencyForm() implements Form {
    private static final List<String> CODES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .sorted()
            .toList();

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable String read(Node node, At at, Problems problems) {
        if (node instanceof Node.Scalar scalar && CODES.contains(scalar.text())) {
            return scalar.text();
        }
        String upper = node instanceof Node.Scalar s ? s.text().toUpperCase(java.util.Locale.ROOT) : "";
        String advice = CODES.contains(upper) ? "did you mean \"" + upper + "\"?" : "try: USD, CAD, EUR";
        Form.wrongShape(node, at, problems, "a currency is due, as its ISO 4217 code", advice);
        return null;
    }

    @Override
    public Map<String, Object> schema() {
        return Schemas.pattern("[A-Z]{3}");
    }

    @Override
    public String example() {
        return "USD";
    }
}
