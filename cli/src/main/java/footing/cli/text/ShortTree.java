package footing.cli.text;

import footing.core.answer.Explanation;
import footing.core.answer.Explanation.How;
import footing.core.answer.Explanation.Unit;
import footing.io.words.Figures;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The sums and differences of an explained figure down to its products, in cents. What rounding leaves over goes to the
 * largest line of a sum, so that every line follows to the cent from those below it. What comes to nothing is left out.
 */
public final class ShortTree {
    private static final double CENTS = 100;
    private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
    private static final int MOST_INDENT = 24;

    private final Lines lines;
    private final String currency;

    private ShortTree(Lines lines, String currency) {
        this.lines = lines;
        this.currency = currency;
    }

    public static String of(Explanation tree, String currency, Letters letters) {
        ShortTree text = new ShortTree(new Lines(letters), currency);
        text.lines.paragraph(tree.label() + ": " + text.shown(tree)).blank();
        text.line(tree, Math.round(CENTS * tree.value()), 0);
        return text.lines.toString();
    }

    private static boolean isMoney(Explanation e) {
        return e.unit() == Unit.MONEY;
    }

    private static boolean isSum(Explanation e) {
        return isMoney(e) && (e.how() == How.SUM || e.how() == How.DIFFERENCE);
    }

    private String shown(Explanation e) {
        return isMoney(e) ? cents(Math.round(CENTS * e.value())) + " " + currency : TreeText.number(e);
    }

    private static String cents(long cents) {
        return Figures.rate(cents / CENTS);
    }

    private void line(Explanation e, long cents, int depth) {
        Explanation node = direct(e);
        List<Explanation> parts = node.parts();
        long[] shares = isSum(node) ? shares(node, cents) : new long[0];
        boolean opened = java.util.Arrays.stream(shares).anyMatch(s -> s != 0);
        print(e.label() + (opened ? rule(node) : ""), isMoney(e) ? cents(cents) : TreeText.number(e), depth);
        for (int i = 0; opened && i < shares.length; i++) {
            if (shares[i] != 0) {
                line(parts.get(i), shares[i], depth + 1);
            }
        }
        if (!opened && !parts.isEmpty()) {
            factors(node, depth);
        }
    }

    /** A sum of one thing is that thing. */
    private static Explanation direct(Explanation e) {
        Explanation node = e;
        while (node.how() == How.SUM && isSum(node)) {
            List<Explanation> some =
                    node.parts().stream().filter(p -> p.value() != 0).toList();
            if (some.size() != 1 || some.get(0).parts().isEmpty()) {
                return node;
            }
            node = some.get(0);
        }
        return node;
    }

    private static String rule(Explanation node) {
        return node.how() == How.SUM ? " = sum of" : " = the first minus the rest of";
    }

    private static long[] shares(Explanation node, long cents) {
        List<Explanation> parts = node.parts();
        long[] shares = new long[parts.size()];
        long rest = cents;
        int largest = 0;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.round(CENTS * parts.get(i).value());
            rest -= sign(node, i) * shares[i];
            largest = Math.abs(shares[i]) > Math.abs(shares[largest]) ? i : largest;
        }
        shares[largest] += sign(node, largest) * rest;
        return shares;
    }

    private static int sign(Explanation node, int part) {
        return node.how() == How.DIFFERENCE && part > 0 ? -1 : 1;
    }

    private void print(String label, String value, int depth) {
        String indent = " ".repeat(Math.min(MOST_INDENT, 2 * depth));
        int room = Lines.WIDTH - value.length() - 2 - indent.length();
        List<String> wrapped = Lines.wrap(label, room);
        for (String line : wrapped.subList(0, wrapped.size() - 1)) {
            lines.line(indent + line);
        }
        lines.line(indent + Lines.left(wrapped.get(wrapped.size() - 1), room) + "  " + value);
    }

    /** '11.3 h (crew-hours made up) times 3 (people on the crew)'. */
    private void factors(Explanation node, int depth) {
        String between = node.how() == How.QUOTIENT ? " divided by " : " times ";
        String factors = node.parts().stream().map(this::factor).collect(Collectors.joining(between));
        List<String> wrapped = new ArrayList<>(Lines.wrap(factors, Lines.WIDTH - 6 - Math.min(MOST_INDENT, 2 * depth)));
        wrapped.forEach(l -> lines.line(" ".repeat(4 + Math.min(MOST_INDENT, 2 * depth)) + l));
    }

    private String factor(Explanation e) {
        return (isMoney(e) ? Figures.rate(e.value()) : few(e)) + " (" + e.label() + ")";
    }

    private static String few(Explanation e) {
        BigDecimal x = new BigDecimal(e.value()).round(DIGITS);
        String number = x.signum() == 0 ? "0" : x.stripTrailingZeros().toPlainString();
        return number + (e.unit() == Unit.HOURS ? " h" : "");
    }
}
