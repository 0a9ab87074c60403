package footing.web.answer;

import footing.core.answer.Explanation;
import footing.io.form.Written;
import footing.io.words.Figures;
import footing.io.words.Lists;
import java.util.List;

/**
 * An explained figure.
 *
 * @param value to as many digits as one would say
 * @param exact to twelve digits, so that it can be reckoned again
 * @param how it follows from its parts; empty for a leaf
 */
record TreeView(String label, String value, String exact, String how, String source, List<TreeView> parts) {
    static TreeView of(Explanation e, String currency) {
        return new TreeView(
                Lists.capital(e.label()),
                value(e, currency),
                Written.number(e.value()),
                how(e),
                e.source(),
                e.parts().stream().map(p -> of(p, currency)).toList());
    }

    private static String value(Explanation e, String currency) {
        double x = e.value();
        return switch (e.unit()) {
            case MONEY -> Figures.rate(x) + " " + currency;
            case MONEY_PER_HOUR -> Figures.rate(x) + " " + currency + " an hour";
            case HOURS -> few(x) + " h";
            case SHARE -> few(100 * x) + " %";
            case COUNT, FACTOR -> few(x);
        };
    }

    /** Four digits or all before the point. */
    private static String few(double x) {
        if (!(Math.abs(x) < 1000)) {
            return Figures.money(x);
        }
        return Written.number(new java.math.BigDecimal(x)
                .round(new java.math.MathContext(4, java.math.RoundingMode.HALF_EVEN))
                .doubleValue());
    }

    private static String how(Explanation e) {
        return switch (e.how()) {
            case LEAF -> "";
            case SUM -> "the sum of";
            case DIFFERENCE -> "the first minus the rest";
            case PRODUCT -> "all of these multiplied together";
            case QUOTIENT -> "the first divided by the second";
        };
    }
}
