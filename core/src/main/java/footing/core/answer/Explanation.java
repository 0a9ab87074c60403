package footing.core.answer;

import java.util.List;

/**
 * Why a figure is what it is: a tree whose leaves are numbers somebody stated, defaults, or counts and hours the
 * simulation came to; every other number follows from those below it by the rule beside it.
 *
 * @param how the value follows from the parts below
 * @param source where a leaf comes from; empty above the leaves
 */
public record Explanation(String label, double value, Unit unit, How how, String source, List<Explanation> parts) {
    /** What a value counts. */
    public enum Unit {
        MONEY,
        MONEY_PER_HOUR,
        HOURS,
        COUNT,
        SHARE,
        FACTOR
    }

    /** How a value follows from the parts below it. */
    public enum How {
        LEAF,
        SUM,
        /** The first less all others. */
        DIFFERENCE,
        PRODUCT,
        /** The first divided by the second. */
        QUOTIENT
    }

    public Explanation {
        parts = List.copyOf(parts);
        if ((how == How.LEAF) != parts.isEmpty()) {
            throw new IllegalArgumentException(label + ": a leaf has no parts, and nothing else is without");
        }
    }

    public static Explanation leaf(String label, double value, Unit unit, String source) {
        return new Explanation(label, value, unit, How.LEAF, source, List.of());
    }

    /** A value worked out from its parts by the rule. */
    public static Explanation by(String label, Unit unit, How how, List<Explanation> parts) {
        double value = parts.get(0).value();
        for (Explanation part : parts.subList(1, parts.size())) {
            value = switch (how) {
                case SUM -> value + part.value();
                case DIFFERENCE -> value - part.value();
                case PRODUCT -> value * part.value();
                case QUOTIENT -> value / part.value();
                case LEAF -> throw new IllegalArgumentException("a leaf has no parts");
            };
        }
        return new Explanation(label, value, unit, how, "", parts);
    }
}
