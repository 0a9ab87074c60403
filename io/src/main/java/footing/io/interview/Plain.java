package footing.io.interview;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a case file and a reader can take them. */
final class Plain {
    private static final BigDecimal MOST_MINUTES = new BigDecimal(240);
    private static final BigDecimal SIXTY = new BigDecimal(60);

    private Plain() {}

    /** Without exponent or trailing zeros. */
    static String number(BigDecimal x) {
        return x.signum() == 0 ? "0" : x.stripTrailingZeros().toPlainString();
    }

    /** To at most two decimals. */
    static String number(double x) {
        return number(new BigDecimal(x).setScale(2, RoundingMode.HALF_EVEN));
    }

    static String share(BigDecimal percent) {
        return number(percent) + " %";
    }

    /** Minutes up to four hours, then hours where they come out even. */
    static String minutes(BigDecimal minutes) {
        boolean even = minutes.remainder(SIXTY).signum() == 0;
        return minutes.compareTo(MOST_MINUTES) > 0 && even
                ? number(minutes.divide(SIXTY)) + " h"
                : number(minutes) + " min";
    }

    /** A share of a value, to two decimals. */
    static BigDecimal part(BigDecimal value, String factor) {
        return value.multiply(new BigDecimal(factor));
    }

    static String three(String low, String likely, String high) {
        return "{low: " + low + ", likely: " + likely + ", high: " + high + "}";
    }
}
