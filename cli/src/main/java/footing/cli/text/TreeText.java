package footing.cli.text;

import footing.core.answer.Explanation;
import footing.io.form.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An explained figure as an indented tree: each value, what it counts, how it follows from the lines below it and, for
 * the last ones, where it comes from. Values have twelve digits, so that the figure can be reckoned again from the last
 * ones to the cent.
 */
public final class TreeText {
    private static final int MOST_INDENT = 40;

    private final Lines lines;
    private final String currency;

    private TreeText(Lines lines, String currency) {
        this.lines = lines;
        this.currency = currency;
    }

    public static String of(Explanation tree, String currency, Letters letters) {
        Lines lines = new Lines(letters);
        TreeText text = new TreeText(lines, currency);
        lines.paragraph(tree.label() + ": " + text.rounded(tree)).blank();
        text.node(tree, 0);
        return lines.toString();
    }

    private String rounded(Explanation tree) {
        boolean money = tree.unit() == Explanation.Unit.MONEY;
        BigDecimal value = BigDecimal.valueOf(tree.value());
        return money ? value.setScale(2, RoundingMode.HALF_EVEN).toPlainString() + " " + currency : shown(tree);
    }

    private void node(Explanation node, int depth) {
        String indent = " ".repeat(Math.min(MOST_INDENT, 2 * depth));
        String value = shown(node);
        int room = Lines.WIDTH - indent.length() - value.length() - 2;
        String label = node.label() + how(node);
        if (label.length() <= room) {
            lines.line(indent + Lines.left(label, room) + "  " + value);
        } else {
            Lines.wrap(label, Lines.WIDTH - indent.length()).forEach(l -> lines.line(indent + l));
            lines.line(Lines.right(value, Lines.WIDTH));
        }
        if (!node.source().isEmpty()) {
            Lines.wrap("[" + node.source() + "]", Lines.WIDTH - indent.length() - 2)
                    .forEach(l -> lines.line(indent + "  " + l));
        }
        node.parts().forEach(p -> node(p, depth + 1));
    }

    private static String how(Explanation node) {
        return switch (node.how()) {
            case LEAF -> "";
            case SUM -> " = sum of";
            case DIFFERENCE -> " = the first minus the rest of";
            case PRODUCT -> " = product of";
            case QUOTIENT -> " = the first divided by the second of";
        };
    }

    private String shown(Explanation node) {
        String number = number(node);
        return switch (node.unit()) {
            case MONEY -> number + " " + currency;
            case MONEY_PER_HOUR -> number + " " + currency + "/h";
            case HOURS, COUNT, SHARE, FACTOR -> number;
        };
    }

    /** To twelve digits. */
    static String number(Explanation node) {
        return Written.number(node.value()) + (node.unit() == Explanation.Unit.HOURS ? " h" : "");
    }
}
