package footing.io.form;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as a case file writes them. */
public final class Written {
    private static final MathContext ENOUGH = new MathContext(12, RoundingMode.HALF_EVEN);

    private Written() {}

    /** A number without trailing zeros or exponent, to 12 digits. */
    public static String number(double x) {
        return plain(new BigDecimal(x).round(ENOUGH));
    }

    /** A number rounded to a few digits in a given direction. */
    static String coarse(double x, int digits, RoundingMode mode) {
        return plain(new BigDecimal(x).round(new MathContext(digits, mode)));
    }

    private static String plain(BigDecimal x) {
        return x.signum() == 0 ? "0" : x.stripTrailingZeros().toPlainString();
    }

    /** A value of a dimension in the unit people would write it in. */
    public static String value(Dimension dimension, double x) {
        return switch (dimension) {
            case MONEY, COUNT -> number(x);
            case METER_HOURS -> number(x) + " h";
            case SHARE -> number(x * 100) + " %";
            case TIME -> inMinutes(x) ? number(x * 60) + " min" : number(x) + " h";
        };
    }

    /** Below an hour, and for 65 min, which in hours has no end. */
    private static boolean inMinutes(double hours) {
        double minutes = hours * 60;
        boolean endless = Math.abs(hours * 100 - Math.rint(hours * 100)) > 1e-9;
        return hours > 0 && (hours < 1 || (endless && Math.abs(minutes - Math.rint(minutes)) < 1e-9));
    }

    /** A fixed value or a three-point. */
    public static String spread(Dimension dimension, Spread spread) {
        if (spread instanceof Metalog m) {
            return "{low: " + value(dimension, m.low()) + ", likely: " + value(dimension, m.likely()) + ", high: "
                    + value(dimension, m.high()) + "}";
        }
        return value(dimension, spread.likely());
    }
}
