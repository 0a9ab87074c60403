package footing.io.words;

import footing.core.fleet.Case;
import footing.core.fleet.Key;

/** In which currency the sums of an answer are, and whether tax is in them. */
public final class MoneyBasis {
    private MoneyBasis() {}

    /** 'All money in USD, before tax' or 'All money in USD, after tax at 24 %'. */
    public static String of(Case stated) {
        Case.Tax tax = stated.money().tax();
        String after = tax == null
                ? "before tax"
                : tax.numbers()
                        .get(Key.TAX_RATE)
                        .map(rate -> "after tax at " + Naming.value(Key.TAX_RATE.dimension(), rate.likely()))
                        .orElse("after tax");
        return "All money in " + stated.heading().currency() + ", " + after;
    }
}
